import { beforeEach, expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { ask, historyOf, libraryWithClips, refusal } from '../workbench.ts';

let backend: Backend;
let clipId: string;
let sessionId: string;

/** Rep 1: 20 to 100 with its stretched end at 60; rep 2 from 120, open. */
beforeEach(async () => {
  ({ backend, clipId, sessionId } = await libraryWithClips());
  for (const [edge, frame] of [
    ['start', 20],
    ['stretchedEnd', 60],
    ['end', 100],
    ['start', 120],
  ] as const) {
    await ask(backend, 'reps.mark', { clipId, edge, frame });
  }
});

async function frames() {
  const { review } = await ask(backend, 'review.get', { sessionId });
  const frame = (moment: object | undefined) => (moment && 'frame' in moment ? moment.frame : null);
  return review.entries[0]?.clips[0]?.reps.map((rep) => [frame(rep.start), frame(rep.stretchedEnd), frame(rep.end)]);
}

it('moves each edge to an exact frame, in one act that undo takes back', async () => {
  await ask(backend, 'reps.moveEdge', { clipId, rep: 1, edge: 'stretchedEnd', frame: 63 });
  await ask(backend, 'reps.moveEdge', { clipId, rep: 1, edge: 'end', frame: 110 });
  await ask(backend, 'reps.moveEdge', { clipId, rep: 1, edge: 'start', frame: 18 });
  expect(await frames()).toEqual([
    [18, 63, 110],
    [120, null, null],
  ]);
  await ask(backend, 'history.undo', { sessionId });
  expect((await historyOf(backend, sessionId)).redo).toBe('Rep 1: start moved');
  expect(await frames()).toEqual([
    [20, 63, 110],
    [120, null, null],
  ]);
});

it.each([
  ['start', 1, 60],
  ['stretchedEnd', 1, 20],
  ['stretchedEnd', 1, 100],
  ['end', 1, 60],
  ['end', 1, 121],
  ['start', 2, 99],
] as const)('keeps the %s of rep %d from going to frame %d, past its neighbour', async (edge, rep, frame) => {
  const before = await frames();
  expect((await refusal(backend, 'reps.moveEdge', { clipId, rep, edge, frame })).code).toBe('conflict');
  expect(await frames()).toEqual(before);
});

it('has no edge to move that was never marked', async () => {
  expect((await refusal(backend, 'reps.moveEdge', { clipId, rep: 2, edge: 'end', frame: 150 })).code).toBe('not-found');
  expect((await refusal(backend, 'reps.moveEdge', { clipId, rep: 9, edge: 'start', frame: 150 })).code).toBe(
    'not-found',
  );
});
