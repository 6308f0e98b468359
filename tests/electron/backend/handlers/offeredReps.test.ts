import { expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { squatTruth } from '../measure/knownRecording.ts';
import { offeringLibrary, recordedLibrary } from '../measure/measuredLibrary.ts';
import { ask, dump, historyOf, refusal } from '../workbench.ts';

const everyEdge = ['start', 'stretchedEnd', 'end'];

async function repsOf(backend: Backend, sessionId: string) {
  const { review } = await ask(backend, 'review.get', { sessionId });
  return review.entries[0]?.clips[0]?.reps ?? [];
}

const measurementOf = async (backend: Backend, clipId: string) =>
  (await ask(backend, 'measures.get', { clipId })).measurement;

/** The frame of the squat clip that is nearest to a moment. */
function frameNear(seconds: number): number {
  const away = squatTruth.pts.map((timeS) => Math.abs(timeS - seconds));
  return away.indexOf(Math.min(...away));
}

it('counts a movement that is offered as a rep, at its frames, as the coach’s own', async () => {
  const { backend, sessionId, clipId } = await offeringLibrary();
  expect(await repsOf(backend, sessionId)).toHaveLength(2);
  const before = await measurementOf(backend, clipId);
  expect([before?.reps.length, before?.offered.length]).toEqual([2, 1]);
  expect(before?.offered[0]?.doubts).toContain('short');

  await ask(backend, 'measures.addOffered', { clipId, offered: before?.offered[0]?.index ?? 0 });
  const reps = await repsOf(backend, sessionId);
  expect(reps.map(({ measured }) => measured ?? [])).toEqual([everyEdge, [], everyEdge]);
  const added = reps[1];
  const { eccentric, concentric } = squatTruth.reps[1]?.phases_s ?? { eccentric: [0, 0], concentric: [0, 0] };
  const frames = [added?.start, added?.stretchedEnd, added?.end].map((moment) =>
    moment && 'frame' in moment ? moment.frame : Number.NaN,
  );
  // Minimum jerk hides its first and last frames, so up to five frames of thirty a second are not seen.
  for (const [place, seconds] of [eccentric[0], eccentric[1], concentric[1]].entries()) {
    expect(Math.abs((frames[place] ?? 0) - frameNear(seconds))).toBeLessThanOrEqual(5);
  }

  const after = await measurementOf(backend, clipId);
  expect(after?.offered).toEqual([]);
  expect(after?.reps.map(({ manualEdges }) => manualEdges)).toEqual([[], ['start', 'end', 'stretchedEnd'], []]);
});

it('is one act with a name: one undo takes the rep back and offers the movement again', async () => {
  const { backend, folder, sessionId, clipId } = await offeringLibrary();
  const before = dump(folder);
  await ask(backend, 'measures.addOffered', { clipId, offered: 1 });
  const added = dump(folder);
  expect(added).not.toBe(before);
  expect((await historyOf(backend, sessionId)).undo).toBe('Movement counted as a rep');
  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
  expect((await measurementOf(backend, clipId))?.offered).toHaveLength(1);
  await ask(backend, 'history.redo', { sessionId });
  expect(dump(folder)).toBe(added);
});

it('keeps the rep that was counted when the measured reps are taken over', async () => {
  const { backend, sessionId, clipId } = await offeringLibrary();
  await ask(backend, 'measures.addOffered', { clipId, offered: 1 });
  const before = await repsOf(backend, sessionId);
  await ask(backend, 'measures.markReps', { clipId });
  expect(await repsOf(backend, sessionId)).toEqual(before);
});

it('refuses with a sentence what is not offered, or no longer, and changes nothing', async () => {
  const { backend, folder, clipId } = await offeringLibrary();
  await ask(backend, 'measures.addOffered', { clipId, offered: 1 });
  const before = dump(folder);
  for (const offered of [1, 0, 7]) {
    expect(await refusal(backend, 'measures.addOffered', { clipId, offered })).toMatchObject({
      code: 'conflict',
      sentence: expect.stringMatching(/^That movement is no longer offered in “.+”, .* mark the rep by hand\.$/),
    });
  }
  expect(dump(folder)).toBe(before);
});

it('refuses where nothing was offered at all', async () => {
  const { backend, folder, clipId } = await recordedLibrary();
  const before = dump(folder);
  expect(await refusal(backend, 'measures.addOffered', { clipId, offered: 1 })).toMatchObject({ code: 'conflict' });
  expect(dump(folder)).toBe(before);
});
