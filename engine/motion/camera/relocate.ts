import { type GreyPicture, shrink } from '../picture/picture.ts';
import { enlarged, type Similarity } from './similarity.ts';

/** How much larger or smaller the picture may have become at once, in steps of `scaleStep`. */
const scaleSteps = 12;
const scaleStep = 1.06;
/** How far it may have gone at once, as a share of its width. */
const reachShare = 0.16;
/** The first picture and this one share at least this much of the first. */
const leastShared = 0.3;
/** What they share correlates at least so well. */
const leastCorrelation = 0.6;
/** The long side of the picture that is searched through; larger ones then make the place more exact. */
const tinySide = 80;
const finerBy = [0.4, 0.16, 0.08] as const;
const strideOfTiny = 3;

/**
 * Where the background of a first picture lies in a later one, when the camera jumped: zoomed at once, or swung. Looks
 * through shifts about a similarity, and sizes if asked, for what correlates best, in a tiny picture and then in larger ones. Null
 * when nothing does well.
 */
export function relocated(
  { first, now, sizes }: { readonly first: GreyPicture; readonly now: GreyPicture; readonly sizes: 'same' | 'any' },
  near: Similarity,
): Similarity | null {
  const tiny = Math.max(1, Math.round(Math.max(now.width, now.height) / tinySide));
  const pictures = { first: shrink(first, tiny), now: shrink(now, tiny) };
  const reach = Math.ceil(reachShare * Math.max(pictures.now.width, pictures.now.height));
  const steps =
    sizes === 'any'
      ? { scale: scaleStep, scales: scaleSteps, shift: 2, shifts: Math.ceil(reach / 2) }
      : { scale: 1, scales: 0, shift: 1, shifts: reach };
  const scales = sizes === 'any' ? 6 : 2;
  const found = bestAbout(enlarged(near, 1 / tiny), { ...pictures, stride: strideOfTiny }, steps);
  let similarity = found.similarity;
  let { correlation } = found;
  let factor = tiny;
  for (const share of finerBy) {
    const finer = Math.max(1, Math.round(share * tiny));
    const level = { first: shrink(first, finer), now: shrink(now, finer), stride: Math.max(1, Math.round(4 / finer)) };
    const shifts = Math.ceil(factor / finer) + 1;
    const across = Math.max(level.now.width, level.now.height);
    const about = enlarged(similarity, factor / finer);
    ({ similarity, correlation } = bestAbout(about, level, { scale: 1 + 1 / across, scales, shift: 1, shifts }));
    factor = finer;
  }
  return correlation >= leastCorrelation ? enlarged(similarity, factor) : null;
}

type Level = { readonly first: GreyPicture; readonly now: GreyPicture; readonly stride: number };

/** The similarity that correlates best, among sizes by powers of `scale` and shifts by multiples of `shift` to either side. */
function bestAbout(
  about: Similarity,
  level: Level,
  {
    scale,
    scales,
    shift,
    shifts,
  }: { readonly scale: number; readonly scales: number; readonly shift: number; readonly shifts: number },
): { readonly similarity: Similarity; readonly correlation: number } {
  let best = { similarity: about, correlation: 0 };
  for (let size = -scales; size <= scales; size += 1) {
    for (let down = -shifts; down <= shifts; down += 1) {
      for (let right = -shifts; right <= shifts; right += 1) {
        const by = { scale: scale ** size, right: right * shift, down: down * shift };
        const similarity = scaledAbout(about, level.now, by);
        const correlation = correlationUnder(similarity, level);
        if (correlation > best.correlation) best = { similarity, correlation };
      }
    }
  }
  return best;
}

/** A similarity followed by a change of size about the picture's middle and a shift. */
function scaledAbout(
  { a, b, shiftXPx, shiftYPx }: Similarity,
  { width, height }: GreyPicture,
  { scale, right, down }: { readonly scale: number; readonly right: number; readonly down: number },
): Similarity {
  const [x, y] = [width / 2, height / 2];
  return {
    a: a * scale,
    b: b * scale,
    shiftXPx: x + (shiftXPx - x) * scale + right,
    shiftYPx: y + (shiftYPx - y) * scale + down,
  };
}

function correlationUnder({ a, b, shiftXPx, shiftYPx }: Similarity, { first, now, stride }: Level): number {
  let [count, own, other, ownSquares, otherSquares, products, possible] = [0, 0, 0, 0, 0, 0, 0];
  for (let row = 0; row < first.height; row += stride) {
    for (let column = 0; column < first.width; column += stride) {
      possible += 1;
      const x = Math.floor(a * (column + 0.5) - b * (row + 0.5) + shiftXPx);
      const y = Math.floor(b * (column + 0.5) + a * (row + 0.5) + shiftYPx);
      if (x < 0 || y < 0 || x >= now.width || y >= now.height) continue;
      const one = first.data[row * first.width + column] ?? 0;
      const two = now.data[y * now.width + x] ?? 0;
      count += 1;
      own += one;
      other += two;
      ownSquares += one * one;
      otherSquares += two * two;
      products += one * two;
    }
  }
  if (count < leastShared * possible) return 0;
  const spread = (ownSquares - own ** 2 / count) * (otherSquares - other ** 2 / count);
  return spread > 0 ? (products - (own * other) / count) / Math.sqrt(spread) : 0;
}
