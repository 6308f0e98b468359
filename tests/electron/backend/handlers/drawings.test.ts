import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeEach, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import type { Drawn } from '../../../../engine/review/drawings/drawing.ts';
import { undoneAndRedone } from '../undoneAndRedone.ts';
import { ask, backendOn, dump, historyOf, jobEnd, libraryWithClips, refusal, temporaryFolder } from '../workbench.ts';

let backend: Backend;
let folder: string;
let clipId: string;
let sessionId: string;

const angle: Drawn = {
  shape: 'angle',
  points: [
    { x: 100, y: 50 },
    { x: 100, y: 150 },
    { x: 200.5, y: 150 },
  ],
};

beforeEach(async () => {
  ({ folder, backend, clipId, sessionId } = await libraryWithClips());
});

const clips = async () => (await ask(backend, 'review.get', { sessionId })).review.entries[0]?.clips ?? [];
const drawings = async () => (await clips())[0]?.drawings ?? [];
const ticksAt = async (frame: number) => (await ask(backend, 'clips.frameTable', { clipId })).table.ticks[frame];

it('keeps a drawing exactly, from the frame it was drawn on to the end of its rep', async () => {
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 24 });
  await ask(backend, 'reps.mark', { clipId, edge: 'end', frame: 120 });
  const { drawingId } = await ask(backend, 'drawings.add', { clipId, drawn: angle, frame: 40 });
  expect(await drawings()).toEqual([
    {
      id: drawingId,
      ...angle,
      from: { frame: 40, ticks: await ticksAt(40) },
      to: { frame: 120, ticks: await ticksAt(120) },
    },
  ]);
  expect((await historyOf(backend, sessionId)).undo).toBe('Drawing: angle');
});

it('shows a drawing outside of reps for one second', async () => {
  await ask(backend, 'drawings.add', { clipId, drawn: angle, frame: 10 });
  const { table } = await ask(backend, 'clips.frameTable', { clipId });
  const perSecond = table.timeBase.denominator / table.timeBase.numerator;
  const [drawing] = await drawings();
  expect(drawing?.to).toMatchObject({ ticks: (table.ticks[10] ?? 0) + perSecond });
});

it('takes each act back and does it again', async () => {
  const states = [dump(folder)];
  const { drawingId } = await ask(backend, 'drawings.add', { clipId, drawn: angle, frame: 40, lastFrame: 50 });
  states.push(dump(folder));
  await ask(backend, 'drawings.update', {
    drawingId,
    change: { drawn: { shape: 'text', points: [{ x: 1, y: 2 }], text: 'Knee' }, firstFrame: 45 },
  });
  expect(await drawings()).toMatchObject([{ shape: 'text', text: 'Knee', from: { frame: 45 }, to: { frame: 50 } }]);
  states.push(dump(folder));
  await ask(backend, 'drawings.remove', { drawingId });
  expect(await drawings()).toEqual([]);
  states.push(dump(folder));
  await undoneAndRedone({ backend, folder, sessionId }, states);
});

it('goes with its clip, and comes back with it', async () => {
  await ask(backend, 'drawings.add', { clipId, drawn: angle, frame: 40 });
  const before = dump(folder);
  await ask(backend, 'clips.remove', { clipId });
  expect(await clips()).toEqual([]);
  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
});

it('refuses a frame that the clip lacks, an end before the beginning, and a slanted plumb, and changes nothing', async () => {
  const { drawingId } = await ask(backend, 'drawings.add', { clipId, drawn: angle, frame: 40, lastFrame: 50 });
  const before = dump(folder);
  const add = { clipId, drawn: angle, frame: 40 };
  expect((await refusal(backend, 'drawings.add', { ...add, frame: 99_999 })).code).toBe('conflict');
  expect((await refusal(backend, 'drawings.add', { ...add, lastFrame: 39 })).code).toBe('conflict');
  expect((await refusal(backend, 'drawings.update', { drawingId, change: { firstFrame: 51 } })).code).toBe('conflict');
  const slanted = {
    shape: 'plumb',
    points: [
      { x: 1, y: 0 },
      { x: 2, y: 9 },
    ],
  } as const;
  const refused = await refusal(backend, 'drawings.add', {
    ...add,
    drawn: { ...slanted, points: [...slanted.points] },
  });
  expect(refused.code).toBe('bad-request');
  expect(dump(folder)).toBe(before);
});

it('is exported with the review, and taken in again from the file', async () => {
  await ask(backend, 'drawings.add', { clipId, drawn: angle, frame: 40, lastFrame: 50 });
  const [drawn] = await drawings();
  const { review } = await ask(backend, 'review.get', { sessionId });
  const file = path.join(temporaryFolder(), 'session.json');

  writeFileSync(file, JSON.stringify(review));
  const other = backendOn(temporaryFolder());
  await ask(other, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  const imported = await ask(other, 'reviews.import', { path: file });
  await jobEnd(other, imported.jobId);
  const taken = (await ask(other, 'review.get', { sessionId: imported.sessionId })).review.entries[0]?.clips[0];
  expect(taken?.drawings).toEqual([{ ...drawn, id: expect.any(String) }]);
});
