import { randomUUID } from 'node:crypto';
import { type Drawn, mostDrawings, usualLastFrame } from '../../../engine/review/drawings/drawing.ts';
import type { Moment } from '../../../engine/time/moment.ts';
import { ProblemError } from '../../contract/reply.ts';
import { type ClipRow, findClip } from '../store/clips.ts';
import { momentColumns } from '../store/columns.ts';
import type { Reading } from '../store/connection.ts';
import {
  type DrawingRow,
  drawingOf,
  drawnColumns,
  findDrawing,
  listDrawings,
  nextDrawingOrdinal,
} from '../store/drawings.ts';
import { readFrameTable } from '../store/frameTables.ts';
import { listReps, repOf } from '../store/reps.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';
import { footageMoment } from './judging.ts';

export const addDrawing: Handler<'drawings.add'> = (context, { clipId, drawn, frame, lastFrame }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  assertVertical(drawn);
  if (listDrawings(reading, clipId).length >= mostDrawings) {
    throw new ProblemError('conflict', 'drawingsFull', { clip: clip.name, most: mostDrawings });
  }
  const from = footageMoment(reading, clip, frame);
  const to = footageMoment(reading, clip, lastFrame ?? usualLast(reading, clip, frame));
  assertOrder(from, to);
  const id = randomUUID();
  return actOnSession(context, clip.session_id, (changes) => {
    changes.insert('drawing', {
      id,
      clip_id: clipId,
      ordinal: nextDrawingOrdinal(changes.reading, clipId),
      ...drawnColumns(drawn),
      ...momentColumns('from', from),
      ...momentColumns('to', to),
    });
    return { name: { id: 'drawingAdded', values: { shape: drawn.shape } }, value: { drawingId: id } };
  });
};

export const updateDrawing: Handler<'drawings.update'> = (context, { drawingId, change }) => {
  const { reading } = context.library();
  const row = existing(reading, drawingId);
  const clip = findClip(reading, row.clip_id);
  const before = drawingOf(row);
  if (change.drawn) assertVertical(change.drawn);
  const from = change.firstFrame === undefined ? before.from : footageMoment(reading, clip, change.firstFrame);
  const to = change.lastFrame === undefined ? before.to : footageMoment(reading, clip, change.lastFrame);
  assertOrder(from, to);
  return actOnSession(context, clip.session_id, (changes) => {
    changes.update(
      'drawing',
      { id: drawingId },
      {
        ...(change.drawn && drawnColumns(change.drawn)),
        ...momentColumns('from', from),
        ...momentColumns('to', to),
      },
    );
    return { name: { id: 'drawingChanged', values: { shape: change.drawn?.shape ?? before.shape } }, value: {} };
  });
};

export const removeDrawing: Handler<'drawings.remove'> = (context, { drawingId }) => {
  const { reading } = context.library();
  const row = existing(reading, drawingId);
  return actOnSession(context, findClip(reading, row.clip_id).session_id, (changes) => {
    changes.remove('drawing', { id: drawingId });
    return { name: { id: 'drawingRemoved', values: { shape: drawingOf(row).shape } }, value: {} };
  });
};

function existing(reading: Reading, drawingId: string): DrawingRow {
  const row = findDrawing(reading, drawingId);
  if (row) return row;
  throw new ProblemError('not-found', 'drawingGone');
}

function usualLast(reading: Reading, clip: ClipRow, frame: number): number {
  const table = clip.footage_id === null ? undefined : readFrameTable(reading, clip.footage_id, 'original');
  if (!table) return frame;
  return usualLastFrame(
    frame,
    listReps(reading, clip.id).map((rep, index) => repOf(rep, index + 1)),
    table,
  );
}

function assertVertical(drawn: Drawn): void {
  if (drawn.shape !== 'plumb' || drawn.points[0].x === drawn.points[1].x) return;
  throw new ProblemError('bad-request', 'plumbSlants');
}

function assertOrder(from: Moment, to: Moment): void {
  if ('ticks' in from && 'ticks' in to ? from.ticks <= to.ticks : true) return;
  throw new ProblemError('conflict', 'drawingEndsEarly');
}
