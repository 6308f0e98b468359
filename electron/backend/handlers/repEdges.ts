import { ProblemError } from '../../contract/reply.ts';
import { findClip } from '../store/clips.ts';
import { frameOf } from '../store/columns.ts';
import { edgeMoment, listReps, type RepRow } from '../store/reps.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';
import { exactMoment } from './judging.ts';

const columnOf = { start: 'start', longEnd: 'long_end', end: 'end' } as const;
const words = { start: 'start', longEnd: 'long end', end: 'end' } as const;

/** The frames between which an edge may lie, so that reps stay in order and whole. */
function room(reps: readonly RepRow[], index: number, edge: keyof typeof columnOf): readonly [number, number] {
  const rep = reps[index];
  const before = reps[index - 1];
  const after = reps[index + 1];
  if (rep === undefined) return [0, -1];
  const start = frameOf(rep, 'start') ?? 0;
  const longEnd = frameOf(rep, 'long_end');
  const end = frameOf(rep, 'end');
  const next = after === undefined ? Number.POSITIVE_INFINITY : (frameOf(after, 'start') ?? Number.POSITIVE_INFINITY);
  const last = end ?? next;
  const beforeUpTo =
    before === undefined
      ? -1
      : Math.max(frameOf(before, 'end') ?? 0, frameOf(before, 'long_end') ?? 0, (frameOf(before, 'start') ?? 0) + 1);
  switch (edge) {
    case 'start':
      return [Math.max(0, beforeUpTo), (longEnd ?? last) - 1];
    case 'longEnd':
      return [start + 1, last - 1];
    case 'end':
      return [(longEnd ?? start) + 1, next];
  }
}

/** Moves an edge that is marked, within the room its neighbours leave. */
export const moveEdge: Handler<'reps.moveEdge'> = (context, { clipId, rep, edge, frame }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const reps = listReps(reading, clipId);
  const row = reps[rep - 1];
  if (row === undefined || frameOf(row, columnOf[edge]) === undefined) {
    throw new ProblemError(
      'not-found',
      `Rep ${rep} of "${clip.name}" has no ${words[edge]} to move; nothing was changed.`,
    );
  }
  const [low, high] = room(reps, rep - 1, edge);
  if (frame < low || frame > high) {
    throw new ProblemError(
      'conflict',
      `The ${words[edge]} of rep ${rep} can’t go past its neighbours, so it stayed where it was; move those first.`,
    );
  }
  const at = exactMoment(reading, clip, frame);
  return actOnSession(context, clip.session_id, (changes) => {
    changes.update('rep', { id: row.id }, edgeMoment(columnOf[edge], at, 'person'));
    return { name: `Rep ${rep}: ${words[edge]} moved`, value: {} };
  });
};
