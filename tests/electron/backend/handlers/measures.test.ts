import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import type { Click } from '../../../../engine/recording/setUp.ts';
import { warning } from '../../../../engine/recording/warnings.ts';
import type { Moment } from '../../../../engine/time/moment.ts';
import { squatTruth } from '../measure/knownRecording.ts';
import { keepDisc, keepJoints, measuredLibrary, recordedLibrary, recordingsIn } from '../measure/measuredLibrary.ts';
import { ask, backendOn, dump, historyOf, jobEnd, preparedLibrary, refusal, temporaryFolder } from '../workbench.ts';

const click: Click = { frame: 30, what: 'disc', at: { xPx: 441, yPx: 112 } };

async function clipOf(backend: Backend, sessionId: string) {
  const { review } = await ask(backend, 'review.get', { sessionId });
  const clip = review.entries[0]?.clips[0];
  if (!clip) throw new Error('The clip is gone.');
  return clip;
}

async function measure(backend: Backend, clipId: string) {
  const { jobIds } = await ask(backend, 'measures.start', { clipIds: [clipId], joints: false });
  return jobEnd(backend, jobIds[0] ?? '');
}

const everyEdge = ['start', 'stretchedEnd', 'end'];

/** Media seconds of a moment in the squat clip, whose frames are 1/30 s apart. */
const secondsOf = (moment: Moment | undefined) =>
  moment && 'frame' in moment ? (squatTruth.pts[moment.frame] ?? Number.NaN) : Number.NaN;

it('marks the reps of a clip that has none, near where they truly are, and one undo takes them back', async () => {
  const { backend, folder, sessionId, clipId } = await recordedLibrary();
  const before = dump(folder);
  expect(await measure(backend, clipId)).toMatchObject({ kind: 'measure', state: 'done', clipId, sessionId });

  const { reps } = await clipOf(backend, sessionId);
  expect(reps.map(({ index, measured }) => [index, measured])).toEqual([1, 2, 3].map((index) => [index, everyEdge]));
  for (const [place, { phases_s: phases }] of squatTruth.reps.entries()) {
    expect(Math.abs(secondsOf(reps[place]?.start) - phases.eccentric[0])).toBeLessThan(0.15);
    expect(Math.abs(secondsOf(reps[place]?.stretchedEnd) - phases.eccentric[1])).toBeLessThan(0.15);
  }
  expect((await historyOf(backend, sessionId)).undo).toBe('Measured: 3 reps');
  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
});

it('leaves reps that are marked as they are', async () => {
  const { backend, folder, sessionId, clipId } = await recordedLibrary();
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 20 });
  const before = dump(folder);
  expect((await measure(backend, clipId)).state).toBe('done');
  expect(dump(folder)).toBe(before);
  expect((await clipOf(backend, sessionId)).reps).toHaveLength(1);
});

it('records what was recorded by the same method once, and says when', async () => {
  const { backend, folder, clipId } = await recordedLibrary();
  const before = await ask(backend, 'measures.get', { clipId });
  expect(before.recordedAt).not.toBeNull();
  await measure(backend, clipId);
  await measure(backend, clipId);
  expect(recordingsIn(folder)).toHaveLength(1);
  expect((await ask(backend, 'measures.get', { clipId })).recordedAt).toBe(before.recordedAt);
});

it('gives the measures, and the recording they come from', async () => {
  const { backend, clipId } = await measuredLibrary();
  const { measurement, setUp, jobId } = await ask(backend, 'measures.get', { clipId });
  expect(jobId).toBeNull();
  expect(setUp).toMatchObject({ discDiameterM: 0.45, facing: null, clicks: [] });
  expect(measurement?.follows).toBe('disc');
  expect(measurement?.reps).toHaveLength(3);
  const { recording } = await ask(backend, 'measures.recording', { clipId });
  expect(recording?.disc?.frames).toHaveLength(squatTruth.pts.length);
  expect(recording).toMatchObject({ point: null, joints: null });
});

it('has nothing to say of a clip that was never recorded, and can’t measure one whose footage is elsewhere', async () => {
  const { backend, sessionId } = await recordedLibrary();
  const { sessionId: elsewhere } = await importedAgain(backend, sessionId, { keepFacts: false });
  const { id: clipId } = await clipOf(backend, elsewhere);
  expect(await ask(backend, 'measures.get', { clipId })).toMatchObject({
    measurement: null,
    recordedAt: null,
    suggestions: [],
    dismissed: [],
  });
  expect(await measure(backend, clipId)).toMatchObject({
    state: 'failed',
    sentence: expect.stringMatching(/not in the library, so there is nothing to measure/),
  });
});

it('takes an edge that a person marks or moves for theirs, and measures by it', async () => {
  const { backend, sessionId, clipId } = await measuredLibrary();
  await ask(backend, 'reps.moveEdge', { clipId, rep: 1, edge: 'start', frame: 21 });
  await ask(backend, 'reps.mark', { clipId, edge: 'stretchedEnd', frame: 210 });
  const { reps } = await clipOf(backend, sessionId);
  expect(reps.map(({ measured }) => measured)).toEqual([['stretchedEnd', 'end'], ['start', 'end'], everyEdge]);
  const { measurement } = await ask(backend, 'measures.get', { clipId });
  expect(measurement?.reps.map(({ manualEdges }) => manualEdges)).toEqual([['start'], ['stretchedEnd'], []]);
  expect(measurement?.reps[0]?.startS).toBeCloseTo(squatTruth.pts[21] ?? 0, 3);

  await ask(backend, 'history.undo', { sessionId });
  await ask(backend, 'history.undo', { sessionId });
  expect((await clipOf(backend, sessionId)).reps.map(({ measured }) => measured)).toEqual([
    everyEdge,
    everyEdge,
    everyEdge,
  ]);
});

it('takes over the measured reps and keeps every edge that a person set', async () => {
  const { backend, folder, sessionId, clipId } = await recordedLibrary();
  await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 22 });
  await ask(backend, 'reps.mark', { clipId, edge: 'end', frame: 138 });
  const before = dump(folder);
  await ask(backend, 'measures.markReps', { clipId });
  const { reps } = await clipOf(backend, sessionId);
  expect(reps.map(({ measured }) => measured)).toEqual([['stretchedEnd'], everyEdge, everyEdge]);
  expect(reps[0]).toMatchObject({ start: { frame: 22 }, end: { frame: 138 } });
  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
});

it('keeps a rep that something was judged on when the measured reps are taken over', async () => {
  const { backend, sessionId, clipId } = await measuredLibrary();
  const flag = { clipId, criterion: 'depth', severity: 'adjust', frame: 90, reps: [1] } as const;
  await ask(backend, 'flags.add', { ...flag, reps: [...flag.reps] });
  await ask(backend, 'measures.markReps', { clipId });
  const { review } = await ask(backend, 'review.get', { sessionId });
  expect(review.entries[0]?.flags[0]?.reps).toEqual([1]);
  expect(review.entries[0]?.clips[0]?.reps).toHaveLength(3);
});

it('changes the set-up as one act that can be taken back', async () => {
  const { backend, folder, sessionId, clipId } = await recordedLibrary();
  const states = [dump(folder)];
  await ask(backend, 'measures.setUp', { clipId, change: { facing: 'left', discDiameterM: 0.4 } });
  expect((await historyOf(backend, sessionId)).undo).toBe('Help to find it: size of the disc and direction faced');
  states.push(dump(folder));
  const depth = { frame: 80, hipCrease: { xPx: 450, yPx: 300 }, kneeTop: { xPx: 470, yPx: 310 } };
  await ask(backend, 'measures.setUp', { clipId, change: { depthClicks: [depth] } });
  expect((await ask(backend, 'measures.get', { clipId })).setUp).toMatchObject({
    facing: 'left',
    discDiameterM: 0.4,
    depthClicks: [depth],
  });
  for (const state of states.reverse()) {
    await ask(backend, 'history.undo', { sessionId });
    expect(dump(folder)).toBe(state);
  }
  expect(
    await refusal(backend, 'measures.setUp', { clipId, change: { depthClicks: [{ ...depth, frame: 9_999 }] } }),
  ).toMatchObject({ code: 'conflict' });
});

it('follows the disc again after a click, and finds the earlier recording when the click is taken back', async () => {
  const { backend, folder, sessionId, clipId } = await measuredLibrary([click]);
  const before = dump(folder);
  const { jobId } = await ask(backend, 'measures.click', { clipId, click });
  expect((await historyOf(backend, sessionId)).undo).toBe('Clicked: disc');
  expect(await jobEnd(backend, jobId)).toMatchObject({ kind: 'measure', state: 'done' });
  expect((await ask(backend, 'measures.get', { clipId })).setUp.clicks).toEqual([click]);

  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
  expect((await ask(backend, 'measures.get', { clipId })).measurement?.reps).toHaveLength(3);

  await ask(backend, 'history.redo', { sessionId });
  const cleared = await ask(backend, 'measures.clearClicks', { clipId, what: 'disc' });
  await jobEnd(backend, cleared.jobId);
  expect((await ask(backend, 'measures.get', { clipId })).setUp.clicks).toEqual([]);
  expect(recordingsIn(folder)).toHaveLength(2);
});

it('takes the joints of whoever was clicked as the lifter, until the click is taken back', async () => {
  const onLifter: Click = { frame: 12, what: 'lifter', at: { xPx: 400, yPx: 250 } };
  const { folder, sessionId, clipId } = await preparedLibrary();
  const asKept = warning('nobodyAtClick', { frame: 12 });
  keepDisc(folder, []);
  keepJoints(folder, [onLifter], [asKept]);
  const backend = backendOn(folder);
  await measure(backend, clipId);
  const before = dump(folder);
  const warnings = async () => (await ask(backend, 'measures.get', { clipId })).measurement?.warnings ?? [];
  expect(await warnings()).not.toContainEqual(asKept);
  const { jobId } = await ask(backend, 'measures.click', { clipId, click: onLifter });
  expect((await historyOf(backend, sessionId)).undo).toBe('Clicked: lifter');
  expect(await jobEnd(backend, jobId)).toMatchObject({ kind: 'measure', state: 'done' });
  expect(await warnings()).toContainEqual(asKept);

  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
  expect(await warnings()).not.toContainEqual(asKept);
  await ask(backend, 'history.redo', { sessionId });
  await ask(backend, 'measures.clearClicks', { clipId, what: 'lifter' });
  expect((await ask(backend, 'measures.get', { clipId })).setUp.clicks).toEqual([]);
});

it('takes one click of a kind at a frame, and none outside the clip', async () => {
  const moved: Click = { ...click, at: { xPx: 450, yPx: 120 } };
  const { backend, clipId } = await measuredLibrary([click]);
  await jobEnd(backend, (await ask(backend, 'measures.click', { clipId, click })).jobId);
  await ask(backend, 'measures.click', { clipId, click: moved });
  expect((await ask(backend, 'measures.get', { clipId })).setUp.clicks).toEqual([moved]);
  expect(await refusal(backend, 'measures.click', { clipId, click: { ...click, frame: 423 } })).toMatchObject({
    code: 'conflict',
  });
});

it('goes with its clip, and comes back with it', async () => {
  const { backend, folder, sessionId, clipId } = await measuredLibrary();
  await ask(backend, 'measures.setUp', { clipId, change: { facing: 'right' } });
  const before = dump(folder);
  await ask(backend, 'clips.remove', { clipId });
  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
  expect((await ask(backend, 'measures.get', { clipId })).measurement?.reps).toHaveLength(3);
});

it('is part of the review file: set-up and measured edges come back from it', async () => {
  const { backend, sessionId, clipId } = await measuredLibrary();
  await ask(backend, 'measures.setUp', { clipId, change: { facing: 'right', discDiameterM: 0.4 } });
  const clip = await clipOf(backend, sessionId);
  expect(clip.setUp).toMatchObject({ facing: 'right', discDiameterM: 0.4 });

  const { sessionId: secondId } = await importedAgain(backend, sessionId);
  const taken = await clipOf(backend, secondId);
  expect(taken.setUp).toEqual(clip.setUp);
  expect(taken.reps).toEqual(clip.reps);
});

/** The session's review file, taken into the same library as another session. */
async function importedAgain(backend: Backend, sessionId: string, { keepFacts } = { keepFacts: true }) {
  const { review } = await ask(backend, 'review.get', { sessionId });
  const entries = review.entries.map((entry) => ({
    ...entry,
    clips: entry.clips.map(({ facts, ...clip }) => (keepFacts ? { ...clip, facts } : clip)),
  }));
  const file = path.join(temporaryFolder(), 'session.json');
  writeFileSync(file, JSON.stringify({ ...review, entries }));
  const imported = await ask(backend, 'reviews.import', { path: file });
  await jobEnd(backend, imported.jobId);
  return imported;
}
