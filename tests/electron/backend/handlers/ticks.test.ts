import { beforeEach, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { ask, historyOf, libraryWithClips, refusal } from '../workbench.ts';

let backend: Backend;
let clipId: string;
let sessionId: string;

beforeEach(async () => {
  ({ backend, clipId, sessionId } = await libraryWithClips());
  for (const frame of [24, 141, 300]) await ask(backend, 'reps.mark', { clipId, edge: 'start', frame });
});

const set = (reps: 'set' | number[], fine: boolean) =>
  ask(backend, 'ticks.set', { clipId, criterion: 'depth', reps, fine });
const ticked = async () => {
  const { review } = await ask(backend, 'review.get', { sessionId });
  return review.entries[0]?.ticks.map((tick) => tick.reps);
};

it('ticks reps and takes ticks back', async () => {
  await set([3, 1], true);
  expect((await historyOf(backend, sessionId)).undo).toBe('Tick: Depth, reps 3 and 1');
  expect(await ticked()).toEqual([[1, 3]]);
  await set([1], false);
  expect((await historyOf(backend, sessionId)).undo).toBe('Tick removed: Depth, rep 1');
  expect(await ticked()).toEqual([[3]]);
});

it('leaves the other reps ticked when one is taken out of a tick for the whole set', async () => {
  await set('set', true);
  expect(await ticked()).toEqual(['set']);
  await set([2], false);
  expect(await ticked()).toEqual([[1, 3]]);
});

it('takes every tick of the criterion back with the whole set', async () => {
  await set([2], true);
  await set('set', true);
  expect(await ticked()).toEqual(['set', [2]]);
  await set('set', false);
  expect(await ticked()).toEqual([]);
});

it('lets a tick stand beside a flag, and counts the criterion as looked at', async () => {
  await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'correct', reps: [1], frame: 30 });
  await set([1, 2, 3], true);
  expect(await ticked()).toEqual([[1, 2, 3]]);
  const grade = await ask(backend, 'grade.get', { sessionId });
  const depth = grade.entries[0]?.criteria.find((each) => each.criterion === 'depth');
  // One rep of three lost 0.60: 100 × (0.40 + 1 + 1) / 3.
  expect(depth?.score).toBeCloseTo(80, 9);
});

it('refuses a rep that is not marked', async () => {
  expect((await refusal(backend, 'ticks.set', { clipId, criterion: 'depth', reps: [4], fine: true })).code).toBe(
    'conflict',
  );
});
