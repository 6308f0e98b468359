import type { Rep } from '../../engine/review/review.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';
import { frameOfMoment, repAtFrame } from './repAtFrame.ts';
import { samePhase } from './samePhase.ts';

/** The frame of the rep before at the phase of a frame; null in the first rep and outside of reps. */
export function ghostFrame(reps: readonly Rep[], frame: number, table: FrameTable): number | null {
  const own = repAtFrame(reps, frame, table);
  if (own === null) return null;
  const inOrder = [...reps].sort((a, b) => frameOfMoment(a.start, table) - frameOfMoment(b.start, table));
  const before = inOrder[inOrder.findIndex((rep) => rep.index === own) - 1];
  return before === undefined
    ? null
    : samePhase(frame, { reps, index: own, table }, { reps, index: before.index, table });
}
