import type { Body } from '../../recording/recording.ts';
import { boxOf, canBeSameBody, presenceOf } from './bodyBox.ts';
import type { Bodies } from './points.ts';

/** Bodies one after the other that can be one person. */
type Stretch = {
  readonly first: Sighting;
  last: Sighting;
  readonly frames: number[];
  /** How much was seen of it: its bodies' presence, added up. */
  seen: number;
};
type Sighting = { readonly atS: number; readonly body: Body };

/** How good the best chain of stretches that ends with this one is, and which comes before it. */
type Chain = { readonly stretch: Stretch; readonly seen: number; readonly before: Chain | null };

/** Nobody is where they were after so long; a longer gap lets nothing more follow. */
const longestGapS = 4;

/**
 * The bodies of one person through a clip: where the network jumped to somebody else, or to something that looks like a body,
 * and back, those frames become null. Of several chains of bodies that can be one person, that of which most was
 * seen is kept.
 *
 * @param timesS seconds of each frame
 */
export function oneBody({ frames }: Bodies, timesS: readonly number[]): (Body | null)[] {
  const stretches = stretchesOf(frames, timesS);
  if (stretches.length < 2) return [...frames];
  const chains: Chain[] = [];
  for (const stretch of stretches) {
    const before = best(chains.filter((chain) => follows(chain.stretch.last, stretch.first)));
    chains.push({ stretch, seen: stretch.seen + (before?.seen ?? 0), before });
  }
  const kept = new Set<number>();
  for (let chain = best(chains); chain !== null; chain = chain.before) {
    for (const frame of chain.stretch.frames) kept.add(frame);
  }
  return frames.map((body, frame) => (kept.has(frame) ? body : null));
}

function stretchesOf(frames: readonly (Body | null)[], timesS: readonly number[]): readonly Stretch[] {
  const stretches: Stretch[] = [];
  frames.forEach((body, frame) => {
    const atS = timesS[frame];
    if (body === null || boxOf(body) === null || atS === undefined) return;
    const here: Sighting = { atS, body };
    const open = stretches.at(-1);
    if (open !== undefined && canBeSameBody(open.last.body, body, atS - open.last.atS)) {
      open.last = here;
      open.frames.push(frame);
      open.seen += presenceOf(body);
    } else stretches.push({ first: here, last: here, frames: [frame], seen: presenceOf(body) });
  });
  return stretches;
}

/** After a long gap anything may follow: the lifter walked, or the camera was turned. */
function follows(last: Sighting, first: Sighting): boolean {
  const passedS = first.atS - last.atS;
  return passedS > longestGapS || canBeSameBody(last.body, first.body, passedS);
}

function best(chains: readonly Chain[]): Chain | null {
  let most: Chain | null = null;
  for (const chain of chains) if (most === null || chain.seen > most.seen) most = chain;
  return most;
}
