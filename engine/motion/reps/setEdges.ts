import type { Exercise } from '../../exercises/exercise.ts';
import { type Curve, indexAt } from './curve.ts';
import { type Move, moveBetween, moveFromTo } from './moves.ts';
import { firstDirection, inOrder, type RepMoves } from './phases.ts';

/** Edges of one rep that a person set, in seconds. */
export type ManualRep = { readonly startS?: number; readonly stretchedEndS?: number; readonly endS?: number };

/** Where a rep lies, in lifting seconds. */
type Bounds = { readonly startS: number; readonly endS: number };
/** The ends of a rep's two moves between its bounds. */
type Turn = { readonly firstEndS: number; readonly secondStartS: number };

/** Less than this share of what the load covers in a rep is no way of its own: then the whole time is. */
const leastWayShare = 0.2;

export type EdgesToFit = {
  readonly curve: Curve;
  readonly exercise: Pick<Exercise, 'beginsWith' | 'lowerEnd'>;
  /** Where the moves lie, edges that a person set included. */
  readonly bounds: Bounds;
  /** The end of the eccentric, if a person set it. */
  readonly stretchedEndS?: number | undefined;
  /** What was measured of the rep; null where nothing was. */
  readonly measured: RepMoves | null;
};

/**
 * A rep's moves within bounds that win over what was measured: measured ends stay as far as they lie in order within the
 * bounds, the others are measured again between them. Null for a hold.
 */
export function movesWithin({ curve, exercise, bounds, stretchedEndS, measured }: EdgesToFit): RepMoves | null {
  const { beginsWith } = exercise;
  if (beginsWith === 'hold') return null;
  const firstGoes = firstDirection(exercise);
  const inner =
    beginsWith === 'eccentric' || stretchedEndS === undefined ? bounds : { startS: bounds.startS, endS: stretchedEndS };
  const firstEndS = beginsWith === 'eccentric' ? stretchedEndS : undefined;
  const known = measured && turnOf(measured);
  const turn =
    known && isWithin(known, inner, firstEndS)
      ? { ...known, firstEndS: firstEndS ?? known.firstEndS }
      : turnWithin(curve, { bounds: inner, firstGoes, firstEndS });
  const [oldFirst, oldSecond] = measured ? inOrder(measured) : [null, null];
  const secondGoes = firstGoes === 'up' ? 'down' : 'up';
  const first = fitted(curve, oldFirst, { direction: firstGoes, startS: inner.startS, endS: turn.firstEndS });
  const second = fitted(curve, oldSecond, { direction: secondGoes, startS: turn.secondStartS, endS: inner.endS });
  return beginsWith === 'eccentric'
    ? { eccentric: first, concentric: second, beginsWith, lastSeenS: null }
    : { eccentric: second, concentric: first, beginsWith, lastSeenS: null };
}

function turnOf(moves: RepMoves): Turn | null {
  const [first, second] = inOrder(moves);
  return second && { firstEndS: first.endS, secondStartS: second.startS };
}

const isWithin = ({ firstEndS, secondStartS }: Turn, { startS, endS }: Bounds, setEndS: number | undefined): boolean =>
  startS < (setEndS ?? firstEndS) && (setEndS ?? firstEndS) <= secondStartS && secondStartS < endS;

/** Where the load turns round between two moments: about its furthest point, or about the end that a person set. */
function turnWithin(
  curve: Curve,
  {
    bounds: { startS, endS },
    firstGoes,
    firstEndS,
  }: { readonly bounds: Bounds; readonly firstGoes: 'up' | 'down'; readonly firstEndS: number | undefined },
): Turn {
  const [from, to] = [indexAt(curve, startS), indexAt(curve, endS)];
  const sense = firstGoes === 'up' ? 1 : -1;
  const start = firstEndS === undefined ? from : indexAt(curve, firstEndS);
  const far = furthest(curve, { from: start, to, sense });
  const farS = clamp(curve.startS + far * curve.stepS, firstEndS ?? startS, endS);
  const least = leastWayShare * rangeWithin(curve, from, to);
  const way = (one: Move | null, direction: 'up' | 'down') =>
    one && one.direction === direction && one.range >= least ? one : null;
  const first = way(moveBetween(curve, from, far), firstGoes);
  const second = way(moveBetween(curve, far, to), firstGoes === 'up' ? 'down' : 'up');
  const turnS = firstEndS ?? clamp(first?.endS ?? farS, startS, farS);
  return { firstEndS: turnS, secondStartS: second === null ? turnS : clamp(second.startS, farS, endS) };
}

function rangeWithin({ values }: Curve, from: number, to: number): number {
  const seen = values.slice(from, to + 1).filter((value) => value !== null);
  return seen.length === 0 ? 0 : Math.max(...seen) - Math.min(...seen);
}

function furthest(curve: Curve, { from, to, sense }: { from: number; to: number; sense: 1 | -1 }): number {
  let far = from;
  for (let index = from; index <= to; index += 1) {
    const [here, best] = [curve.values[index] ?? null, curve.values[far] ?? null];
    if (here !== null && (best === null || here * sense > best * sense)) far = index;
  }
  return far;
}

const clamp = (value: number, least: number, most: number): number => Math.max(least, Math.min(value, most));

/** The measured move where its ends are the same; else the move between the new ones. */
function fitted(
  curve: Curve,
  measured: Move | null,
  span: { readonly direction: 'up' | 'down'; readonly startS: number; readonly endS: number },
): Move {
  const same = measured !== null && measured.startS === span.startS && measured.endS === span.endS;
  return same ? measured : moveFromTo(curve, span);
}
