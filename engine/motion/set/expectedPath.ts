import type { Exercise } from '../../exercises/exercise.ts';
import { type Curve, indexAt, timeOf, valueAt } from '../reps/curve.ts';
import { inOrder, type RepMoves, spanOf } from '../reps/phases.ts';

/** How far the load is from where it should be, at one moment: + = forward. */
export type Deviation = { readonly atS: number; readonly forwardM: number; readonly heightShare: number };

/** At how many heights a usual path is read. */
const levels = 24;
/** Where a rep starts is the mean over this long. */
const startWindowS = 0.12;

export type ForwardPath = { readonly up: Curve; readonly forward: Curve };

/**
 * How far each rep strays from the path that its exercise expects: upright over where the rep began; along the rail; or,
 * where the path is a curve, along the set's own usual curve at the same height and in the same phase, since no two lifters
 * have the same. Null for shapes that have no expected line (an arc about a joint, a free or level path), and for a single rep
 * of a curve.
 */
export function deviationsOf(
  path: ForwardPath,
  reps: readonly RepMoves[],
  { shape, railTiltDeg }: Exercise['targets']['path'],
): (readonly Deviation[] | null)[] {
  switch (shape) {
    case 'vertical':
      return reps.map((rep) => samplesOf(path, rep).map(({ sample }) => sample));
    case 'rail': {
      const perMetre = Math.tan(((railTiltDeg ?? 0) * Math.PI) / 180);
      return reps.map((rep) =>
        samplesOf(path, rep).map(({ sample, upM }) => ({ ...sample, forwardM: sample.forwardM - perMetre * upM })),
      );
    }
    case 'curve':
      return alongUsualCurve(path, reps);
    case 'arc':
    case 'horizontal':
    case 'free':
      return reps.map(() => null);
  }
}

type Sample = { readonly sample: Deviation; readonly upM: number; readonly phase: 'eccentric' | 'concentric' };

/** A rep's path relative to its start, from the beginning of its first phase to the end of its second. */
function samplesOf({ up, forward }: ForwardPath, rep: RepMoves): Sample[] {
  const [first, second] = inOrder(rep);
  const { endS } = spanOf(rep);
  const turnS = second ? (first.endS + second.startS) / 2 : endS;
  const startUp = meanAbout(up, first.startS);
  const startForward = meanAbout(forward, first.startS);
  if (startUp === null || startForward === null) return [];
  const heights = up.values.slice(indexAt(up, first.startS), indexAt(up, endS) + 1).filter((value) => value !== null);
  const low = Math.min(...heights);
  const range = Math.max(...heights) - low;
  const samples: Sample[] = [];
  for (let index = indexAt(up, first.startS); index <= indexAt(up, endS); index += 1) {
    const height = up.values[index] ?? null;
    const atS = timeOf(up, index);
    const forwardM = valueAt(forward, atS);
    if (height === null || forwardM === null) continue;
    const heightShare = range > 0 ? (height - low) / range : 0;
    const phase = atS < turnS ? rep.beginsWith : other(rep.beginsWith);
    samples.push({ sample: { atS, forwardM: forwardM - startForward, heightShare }, upM: height - startUp, phase });
  }
  return samples;
}

const other = (phase: 'eccentric' | 'concentric') => (phase === 'eccentric' ? 'concentric' : 'eccentric');

function meanAbout(curve: Curve, atS: number): number | null {
  const from = indexAt(curve, atS - startWindowS);
  const near = curve.values.slice(from, indexAt(curve, atS) + 1).filter((value) => value !== null);
  return near.length === 0 ? null : near.reduce((sum, value) => sum + value, 0) / near.length;
}

function alongUsualCurve(path: ForwardPath, reps: readonly RepMoves[]): (readonly Deviation[] | null)[] {
  if (reps.length < 2) return reps.map(() => null);
  const all = reps.map((rep) => samplesOf(path, rep));
  const usual = {
    eccentric: usualCurve(all.map((samples) => samples.filter(({ phase }) => phase === 'eccentric'))),
    concentric: usualCurve(all.map((samples) => samples.filter(({ phase }) => phase === 'concentric'))),
  };
  return all.map((samples) =>
    samples.map(({ sample, phase }) => ({
      ...sample,
      forwardM: sample.forwardM - readLevel(usual[phase], sample.heightShare),
    })),
  );
}

/** What is usual of the reps' positions, given in order: the median; of two, the first. Null for none. */
export function usualPosition(positionsM: readonly number[]): number | null {
  if (positionsM.length === 2) return positionsM[0] ?? null;
  return [...positionsM].sort((one, other) => one - other)[positionsM.length >> 1] ?? null;
}

/** The usual forward position at each level. */
function usualCurve(reps: readonly (readonly Sample[])[]): number[] {
  return Array.from({ length: levels + 1 }, (_, level) => {
    const positions = reps.flatMap((samples) => forwardAt(samples, level / levels) ?? []);
    return usualPosition(positions) ?? 0;
  });
}

/** A rep's forward position nearest to a level, or null. */
function forwardAt(samples: readonly Sample[], share: number): number | null {
  let nearest: Sample | null = null;
  for (const one of samples) {
    if (!nearest || Math.abs(one.sample.heightShare - share) < Math.abs(nearest.sample.heightShare - share))
      nearest = one;
  }
  return nearest ? nearest.sample.forwardM : null;
}

function readLevel(curve: readonly number[], share: number): number {
  const level = Math.min(1, Math.max(0, share)) * levels;
  const below = Math.floor(level);
  const lower = curve[below] ?? 0;
  return lower + ((curve[below + 1] ?? lower) - lower) * (level - below);
}
