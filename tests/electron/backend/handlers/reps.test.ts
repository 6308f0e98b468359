import { beforeEach, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { ask, libraryWithClips, refusal } from '../workbench.ts';

let backend: Backend;
let clipId: string;
let sessionId: string;

beforeEach(async () => {
  ({ backend, clipId, sessionId } = await libraryWithClips());
});

const mark = async (edge: 'start' | 'stretchedEnd' | 'end', frame: number) =>
  (await ask(backend, 'reps.mark', { clipId, edge, frame })).rep;

/** The clip's reps as [start, stretched end, end] frames. */
async function reps() {
  const { review } = await ask(backend, 'review.get', { sessionId });
  const frame = (moment: object | undefined) => (moment && 'frame' in moment ? moment.frame : null);
  return review.entries[0]?.clips[0]?.reps.map((rep) => [frame(rep.start), frame(rep.stretchedEnd), frame(rep.end)]);
}

it('gives an edge to the rep that started last, and stores the frame with its ticks', async () => {
  expect(await mark('start', 24)).toBe(1);
  expect(await mark('stretchedEnd', 72)).toBe(1);
  expect(await mark('end', 117)).toBe(1);
  const { review } = await ask(backend, 'review.get', { sessionId });
  const { table } = await ask(backend, 'clips.frameTable', { clipId });
  const at = (frame: number) => ({ frame, ticks: table.ticks[frame] });
  expect(review.entries[0]?.clips[0]?.reps).toEqual([{ index: 1, start: at(24), stretchedEnd: at(72), end: at(117) }]);
});

it('numbers reps by their starts, whatever order they are marked in', async () => {
  expect(await mark('start', 300)).toBe(1);
  expect(await mark('start', 24)).toBe(1);
  expect(await mark('start', 141)).toBe(2);
  expect(await mark('end', 350)).toBe(3);
  expect(await reps()).toEqual([
    [24, null, null],
    [141, null, null],
    [300, null, 350],
  ]);
});

it('moves an edge that is marked again', async () => {
  await mark('start', 24);
  await mark('stretchedEnd', 72);
  await mark('end', 117);
  await mark('stretchedEnd', 80);
  await mark('end', 110);
  expect(await reps()).toEqual([[24, 80, 110]]);
});

it('clears the edge that another one is moved past', async () => {
  await mark('start', 24);
  await mark('stretchedEnd', 72);
  await mark('end', 117);
  await mark('end', 60);
  expect(await reps()).toEqual([[24, null, 60]]);
  await mark('stretchedEnd', 61);
  expect(await reps()).toEqual([[24, 61, null]]);
});

it('ends the earlier rep where a start inside it begins the next', async () => {
  await mark('start', 24);
  await mark('stretchedEnd', 72);
  await mark('end', 117);
  expect(await mark('start', 100)).toBe(2);
  expect(await reps()).toEqual([
    [24, 72, 100],
    [100, null, null],
  ]);
  expect(await mark('start', 50)).toBe(2);
  expect(await reps()).toEqual([
    [24, null, 50],
    [50, null, null],
    [100, null, null],
  ]);
});

it('changes nothing when a start is marked where one is', async () => {
  await mark('start', 24);
  const before = await ask(backend, 'history.list', { sessionId });
  expect(await mark('start', 24)).toBe(1);
  expect(await ask(backend, 'history.list', { sessionId })).toEqual(before);
});

it('refuses a later edge without a rep to belong to, or at its very start', async () => {
  const early = await refusal(backend, 'reps.mark', { clipId, edge: 'end', frame: 10 });
  expect(early.code).toBe('conflict');
  expect(early.sentence).toMatch(/No rep starts before this frame/);
  await mark('start', 24);
  expect((await refusal(backend, 'reps.mark', { clipId, edge: 'stretchedEnd', frame: 24 })).code).toBe('conflict');
  expect(await reps()).toEqual([[24, null, null]]);
});

it('refuses a frame that the footage does not have', async () => {
  const problem = await refusal(backend, 'reps.mark', { clipId, edge: 'start', frame: 423 });
  expect(problem.code).toBe('conflict');
  expect(problem.sentence).toMatch(/has no frame 423/);
  expect(await mark('start', 422)).toBe(1);
});

it('keeps flags on their reps when an earlier rep comes in and renumbers them', async () => {
  await mark('start', 141);
  await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'correct', reps: [1], frame: 150 });
  await ask(backend, 'ticks.set', { clipId, criterion: 'barPath', reps: [1], fine: true });
  await mark('start', 24);
  const { review } = await ask(backend, 'review.get', { sessionId });
  expect(review.entries[0]?.flags.map((flag) => flag.reps)).toEqual([[2]]);
  expect(review.entries[0]?.ticks).toEqual([{ clip: clipId, criterion: 'barPath', reps: [2] }]);
});

it('takes a removed rep out of its flags, and a flag that spoke of it alone with it, in one act', async () => {
  await mark('start', 24);
  await mark('start', 141);
  await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'correct', reps: [1], frame: 70 });
  await ask(backend, 'flags.add', { clipId, criterion: 'barPath', severity: 'adjust', reps: [1, 2], frame: 80 });
  await ask(backend, 'flags.add', { clipId, criterion: 'headPosition', severity: 'prefer', reps: 'set', frame: 90 });
  await ask(backend, 'ticks.set', { clipId, criterion: 'pauses', reps: [1, 2], fine: true });
  const whole = (await ask(backend, 'review.get', { sessionId })).review;
  await ask(backend, 'reps.remove', { clipId, rep: 1 });
  const { review } = await ask(backend, 'review.get', { sessionId });
  expect(review.entries[0]?.flags.map((flag) => [flag.criterion, flag.reps])).toEqual([
    ['barPath', [1]],
    ['headPosition', 'set'],
  ]);
  expect(review.entries[0]?.ticks).toEqual([{ clip: clipId, criterion: 'pauses', reps: [1] }]);
  await ask(backend, 'history.undo', { sessionId });
  expect((await ask(backend, 'review.get', { sessionId })).review).toEqual(whole);
});
