import { randomUUID } from 'node:crypto';
import { ProblemError } from '../../contract/reply.ts';
import type { Changes } from '../store/changes.ts';
import { type ClipHome, findClip } from '../store/clips.ts';
import { frameOf } from '../store/columns.ts';
import { flagIdsOfRep, repIdsOfFlag } from '../store/judgements.ts';
import { type EdgeColumn, edgeMoment, listReps, type RepRow } from '../store/reps.ts';
import { actOnSession } from './acts.ts';
import { deleteFlag } from './clips.ts';
import type { Handler } from './handler.ts';
import { exactMoment } from './judging.ts';

type Exact = ReturnType<typeof exactMoment>;

/** Marks an edge of a rep; an edge that the new one pushes out of order is cleared. */
export const markRep: Handler<'reps.mark'> = (context, { clipId, edge, frame }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const at = exactMoment(reading, clip, frame);
  return actOnSession(context, clip.session_id, (changes) => {
    const repId = edge === 'start' ? markStart(changes, clipId, at) : markLaterEdge(changes, clip, edge, at);
    const rep = listReps(changes.reading, clipId).findIndex((row) => row.id === repId) + 1;
    return { name: { id: 'edgeMarked', values: { rep, edge } }, value: { rep } };
  });
};

/** Removes a rep, and with it what was judged on it alone. */
export const removeRep: Handler<'reps.remove'> = (context, { clipId, rep }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const row = listReps(reading, clipId)[rep - 1];
  if (!row) throw new ProblemError('not-found', 'repNotMarked', { rep, clip: clip.name });
  return actOnSession(context, clip.session_id, (changes) => {
    const flagIds = flagIdsOfRep(changes.reading, row.id);
    changes.removeWhere('flag_rep', 'rep_id', row.id);
    for (const flagId of flagIds) {
      if (repIdsOfFlag(changes.reading, flagId).length === 0) deleteFlag(changes, flagId);
    }
    changes.removeWhere('tick', 'rep_id', row.id);
    changes.remove('rep', { id: row.id });
    return { name: { id: 'repRemoved', values: { rep } }, value: {} };
  });
};

function markStart(changes: Changes, clipId: string, at: Exact): string {
  const before = lastStarted(listReps(changes.reading, clipId), at.frame);
  if (before && frameOf(before, 'start') === at.frame) {
    changes.update('rep', { id: before.id }, edgeMoment('start', at, 'person'));
    return before.id;
  }
  if (before) {
    const stretchedEnd = frameOf(before, 'stretched_end') ?? -1;
    const end = frameOf(before, 'end') ?? -1;
    changes.update(
      'rep',
      { id: before.id },
      {
        ...(stretchedEnd >= at.frame && noEdge('stretched_end')),
        ...(end > at.frame && edgeMoment('end', at, 'person')),
      },
    );
  }
  const id = randomUUID();
  changes.insert('rep', {
    id,
    clip_id: clipId,
    ...edgeMoment('start', at, 'person'),
    ...noEdge('stretched_end'),
    ...noEdge('end'),
  });
  return id;
}

function markLaterEdge(changes: Changes, clip: ClipHome, edge: 'stretchedEnd' | 'end', at: Exact): string {
  const rep = lastStarted(listReps(changes.reading, clip.id), at.frame);
  if (!rep) {
    throw new ProblemError('conflict', 'noRepStarted', { edge });
  }
  if (frameOf(rep, 'start') === at.frame) {
    throw new ProblemError('conflict', 'repStartsHere', { edge });
  }
  const columns = edge === 'stretchedEnd' ? stretchedEndColumns(rep, at) : endColumns(rep, at);
  changes.update('rep', { id: rep.id }, columns);
  return rep.id;
}

function stretchedEndColumns(rep: RepRow, at: Exact) {
  const end = frameOf(rep, 'end');
  const past = end !== undefined && end <= at.frame;
  return { ...edgeMoment('stretched_end', at, 'person'), ...(past && noEdge('end')) };
}

function endColumns(rep: RepRow, at: Exact) {
  const stretchedEnd = frameOf(rep, 'stretched_end');
  const past = stretchedEnd !== undefined && stretchedEnd >= at.frame;
  return { ...edgeMoment('end', at, 'person'), ...(past && noEdge('stretched_end')) };
}

const noEdge = (edge: EdgeColumn) => edgeMoment(edge, undefined, 'person');

function lastStarted(reps: readonly RepRow[], frame: number): RepRow | undefined {
  return reps.findLast((rep) => (frameOf(rep, 'start') ?? Number.POSITIVE_INFINITY) <= frame);
}

const columnOf = { start: 'start', stretchedEnd: 'stretched_end', end: 'end' } as const;

/** The frames between which an edge may lie, so that reps stay in order and whole. */
function room(reps: readonly RepRow[], index: number, edge: keyof typeof columnOf): readonly [number, number] {
  const rep = reps[index];
  const before = reps[index - 1];
  const after = reps[index + 1];
  if (rep === undefined) return [0, -1];
  const start = frameOf(rep, 'start') ?? 0;
  const stretchedEnd = frameOf(rep, 'stretched_end');
  const end = frameOf(rep, 'end');
  const next = after === undefined ? Number.POSITIVE_INFINITY : (frameOf(after, 'start') ?? Number.POSITIVE_INFINITY);
  const last = end ?? next;
  const beforeUpTo =
    before === undefined
      ? -1
      : Math.max(
          frameOf(before, 'end') ?? 0,
          frameOf(before, 'stretched_end') ?? 0,
          (frameOf(before, 'start') ?? 0) + 1,
        );
  switch (edge) {
    case 'start':
      return [Math.max(0, beforeUpTo), (stretchedEnd ?? last) - 1];
    case 'stretchedEnd':
      return [start + 1, last - 1];
    case 'end':
      return [(stretchedEnd ?? start) + 1, next];
  }
}

/** Moves an edge that is marked, within the room its neighbours leave. */
export const moveEdge: Handler<'reps.moveEdge'> = (context, { clipId, rep, edge, frame }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const reps = listReps(reading, clipId);
  const row = reps[rep - 1];
  if (row === undefined || frameOf(row, columnOf[edge]) === undefined) {
    throw new ProblemError('not-found', 'noEdge', { rep, clip: clip.name, edge });
  }
  const [low, high] = room(reps, rep - 1, edge);
  if (frame < low || frame > high) {
    throw new ProblemError('conflict', 'edgeBeyond', { rep, edge });
  }
  const at = exactMoment(reading, clip, frame);
  return actOnSession(context, clip.session_id, (changes) => {
    changes.update('rep', { id: row.id }, edgeMoment(columnOf[edge], at, 'person'));
    return { name: { id: 'edgeMoved', values: { rep, edge } }, value: {} };
  });
};
