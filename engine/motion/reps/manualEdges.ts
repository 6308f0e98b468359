import type { Exercise } from '../../exercises/exercise.ts';
import { type Curve, indexAt } from './curve.ts';
import { type Move, moveBetween } from './moves.ts';
import { eccentricDirection, type RepMoves } from './phases.ts';

/** Edges of one rep that a person set, in seconds. */
export type ManualRep = { readonly startS?: number; readonly longEndS?: number; readonly endS?: number };
export type ManualEdge = 'start' | 'longEnd' | 'end';

/** A rep with the edges that a person set. */
export type EdgedRep = { readonly moves: RepMoves; readonly manualEdges: readonly ManualEdge[] };

/**
 * Puts the edges that a person set in place of the measured ones: each manual rep goes to the measured rep that it shares
 * most time with; one that lies where nothing was measured becomes a rep of its own if both its ends are known.
 */
export function withManualEdges(
  measured: readonly RepMoves[],
  manual: readonly ManualRep[],
  { curve, exercise }: { readonly curve: Curve; readonly exercise: Pick<Exercise, 'beginsWith' | 'lowerEnd'> },
): EdgedRep[] {
  const reps: EdgedRep[] = measured.map((moves) => ({ moves, manualEdges: [] }));
  for (const edges of manual) {
    const index = nearestRep(reps, edges);
    const rep = reps[index];
    if (rep) reps[index] = edged(rep.moves, edges);
    else {
      const own = repWithin(curve, edges, exercise);
      if (own) reps.push(edged(own, edges));
    }
  }
  return reps.sort((one, other) => spanOf(one.moves).startS - spanOf(other.moves).startS);
}

/** From the start of a rep's first move to the end of its second. */
export function spanOf({ eccentric, concentric, beginsWith }: RepMoves): {
  readonly startS: number;
  readonly endS: number;
} {
  return beginsWith === 'eccentric'
    ? { startS: eccentric.startS, endS: concentric.endS }
    : { startS: concentric.startS, endS: eccentric.endS };
}

function nearestRep(reps: readonly EdgedRep[], { startS, longEndS, endS }: ManualRep): number {
  const from = startS ?? longEndS ?? endS ?? 0;
  const to = endS ?? longEndS ?? startS ?? 0;
  let best = -1;
  let most = 0;
  reps.forEach(({ moves, manualEdges }, index) => {
    if (manualEdges.length > 0) return;
    const span = spanOf(moves);
    const shared = Math.min(to, span.endS) - Math.max(from, span.startS);
    const lying = from === to && from >= span.startS - 0.5 && from <= span.endS + 0.5 ? 0.01 : shared;
    if (lying > most) {
      most = lying;
      best = index;
    }
  });
  return best;
}

function edged(moves: RepMoves, { startS, longEndS, endS }: ManualRep): EdgedRep {
  const begins = moves.beginsWith;
  const eccentric = { ...moves.eccentric };
  const concentric = { ...moves.concentric };
  const [first, second] = begins === 'eccentric' ? [eccentric, concentric] : [concentric, eccentric];
  const manualEdges: ManualEdge[] = [];
  if (startS !== undefined) {
    first.startS = Math.min(startS, first.endS);
    manualEdges.push('start');
  }
  if (endS !== undefined) {
    second.endS = Math.max(endS, second.startS);
    manualEdges.push('end');
  }
  if (longEndS !== undefined) {
    eccentric.endS = Math.max(longEndS, eccentric.startS);
    if (begins === 'eccentric') concentric.startS = Math.max(concentric.startS, longEndS);
    manualEdges.push('longEnd');
  }
  return { moves: { eccentric, concentric, beginsWith: begins }, manualEdges };
}

/** The two moves between a start and an end that a person set: to the furthest point between them, and back. */
function repWithin(
  curve: Curve,
  { startS, endS }: ManualRep,
  exercise: Pick<Exercise, 'beginsWith' | 'lowerEnd'>,
): RepMoves | null {
  if (startS === undefined || endS === undefined || exercise.beginsWith === 'hold') return null;
  const from = indexAt(curve, startS);
  const to = indexAt(curve, endS);
  const eccentric = eccentricDirection(exercise);
  const firstGoes = exercise.beginsWith === 'eccentric' ? eccentric : eccentric === 'down' ? 'up' : 'down';
  const sense = firstGoes === 'up' ? 1 : -1;
  let far = from;
  for (let index = from; index <= to; index += 1) {
    if ((curve.values[index] ?? 0) * sense > (curve.values[far] ?? 0) * sense) far = index;
  }
  const first = goingThe(firstGoes, moveBetween(curve, from, far));
  const second = moveBetween(curve, far, to);
  if (!first || !second || second.direction === firstGoes) return null;
  return exercise.beginsWith === 'eccentric'
    ? { eccentric: first, concentric: second, beginsWith: 'eccentric' }
    : { eccentric: second, concentric: first, beginsWith: 'concentric' };
}

const goingThe = (direction: 'up' | 'down', move: Move | null): Move | null =>
  move?.direction === direction ? move : null;
