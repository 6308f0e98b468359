import type { Exercise } from '../../exercises/exercise.ts';
import type { Curve } from './curve.ts';
import type { FoundRep } from './findReps.ts';
import { type RepMoves, spanOf } from './phases.ts';
import { type ManualRep, movesWithin } from './setEdges.ts';

export type ManualEdge = 'start' | 'stretchedEnd' | 'end';

/** A rep with the edges that a person set. From the start of its first move it lasts until the end of its second, or the end set. */
export type EdgedRep = FoundRep & {
  readonly span: { readonly startS: number; readonly endS: number };
  readonly manualEdges: readonly ManualEdge[];
};

type Lift = { readonly curve: Curve; readonly exercise: Pick<Exercise, 'beginsWith' | 'lowerEnd'> };

/**
 * Puts the edges that a person set in place of the measured ones: each manual rep goes to the measured rep that it shares
 * most time with; one that lies where nothing was measured becomes a rep of its own if both its ends are known. Set edges
 * stay exactly where they were set; the measured ones of the same rep and of its neighbours give way. Edges that are not in
 * order are no edges.
 */
export function withManualEdges(measured: readonly FoundRep[], manual: readonly ManualRep[], lift: Lift): EdgedRep[] {
  const reps: EdgedRep[] = measured.map((rep) => ({ ...rep, span: spanOf(rep.moves), manualEdges: [] }));
  for (const edges of manual.filter(areInOrder)) {
    const index = nearestRep(reps, edges);
    const rep = reps[index];
    const edged = rep ? withEdges(rep.moves, edges, lift) : ownRep(edges, lift);
    if (edged && rep) reps[index] = edged;
    else if (edged) reps.push(edged);
  }
  return makingWay(
    reps.sort((one, other) => one.span.startS - other.span.startS),
    lift,
  );
}

function areInOrder({ startS, stretchedEndS, endS }: ManualRep): boolean {
  const edges = [startS, stretchedEndS, endS].filter((edge) => edge !== undefined);
  return edges.every((edge, index) => index === 0 || edge > (edges[index - 1] ?? edge));
}

/** A start or an end alone may lie this far outside the rep that it belongs to. */
const reachS = 0.5;

function nearestRep(reps: readonly EdgedRep[], { startS, stretchedEndS, endS }: ManualRep): number {
  const from = startS ?? stretchedEndS ?? endS ?? 0;
  const to = endS ?? stretchedEndS ?? startS ?? 0;
  let best = -1;
  let most = 0;
  reps.forEach(({ span, manualEdges }, index) => {
    if (manualEdges.length > 0) return;
    const shared = Math.min(to, span.endS) - Math.max(from, span.startS);
    const outside = Math.max(0, span.startS - from, from - span.endS);
    const lying = from === to && outside <= reachS ? 0.01 * (1 - outside) : shared;
    if (lying > most) {
      most = lying;
      best = index;
    }
  });
  return best;
}

/** A measured rep with edges that a person set; a measured end on the wrong side of a set one goes to it. */
function withEdges(moves: RepMoves, { startS, stretchedEndS, endS }: ManualRep, lift: Lift): EdgedRep | null {
  const measured = spanOf(moves);
  const start = startS ?? Math.min(measured.startS, stretchedEndS ?? endS ?? measured.startS);
  const end = endS ?? Math.max(measured.endS, stretchedEndS ?? startS ?? measured.endS);
  return edgedWithin({ startS: start, endS: end }, { startS, stretchedEndS, endS }, { measured: moves, lift });
}

/** The two moves between a start and an end that a person set; null where the load doesn't go there and back. */
function ownRep(edges: ManualRep, lift: Lift): EdgedRep | null {
  const { startS, endS } = edges;
  if (startS === undefined || endS === undefined) return null;
  const own = edgedWithin({ startS, endS }, edges, { measured: null, lift });
  if (!own) return null;
  const { eccentric, concentric } = own.moves;
  return (eccentric?.peakSpeed ?? 0) > 0 && concentric.peakSpeed > 0 ? own : null;
}

type Manual = { readonly [edge in keyof ManualRep]: number | undefined };

function edgedWithin(
  bounds: EdgedRep['span'],
  { startS, stretchedEndS, endS }: Manual,
  { measured, lift }: { readonly measured: RepMoves | null; readonly lift: Lift },
): EdgedRep | null {
  const moves = movesWithin({ ...lift, bounds, stretchedEndS, measured });
  if (!moves) return null;
  const set: ManualEdge[] = [];
  if (startS !== undefined) set.push('start');
  if (endS !== undefined) set.push('end');
  if (stretchedEndS !== undefined) set.push('stretchedEnd');
  const span = { startS: bounds.startS, endS: endS ?? spanOf(moves).endS };
  return { moves, span, manualEdges: set, sureness: 1, doubts: [] };
}

const isManual = ({ manualEdges }: EdgedRep): boolean => manualEdges.length > 0;

/** Measured edges make way for those that a person set on the rep before or after; a rep left without time is none. */
function makingWay(reps: readonly EdgedRep[], lift: Lift): EdgedRep[] {
  return reps.flatMap((rep, index) => {
    const { span, manualEdges, moves } = rep;
    const before = reps.slice(0, index).findLast(isManual);
    const after = reps.slice(index + 1).find(isManual);
    const startS = manualEdges.includes('start')
      ? span.startS
      : Math.max(span.startS, before?.span.endS ?? span.startS);
    const endS = manualEdges.includes('end') ? span.endS : Math.min(span.endS, after?.span.startS ?? span.endS);
    if (startS === span.startS && endS === span.endS) return [rep];
    if (startS >= endS) return manualEdges.length === 0 ? [] : [rep];
    const { eccentric } = moves;
    const set = { stretchedEndS: manualEdges.includes('stretchedEnd') ? eccentric?.endS : undefined };
    const moved = edgedWithin(
      { startS, endS },
      { startS: undefined, endS: undefined, ...set },
      { measured: moves, lift },
    );
    return moved ? [{ ...rep, moves: moved.moves, span: moved.span }] : [];
  });
}
