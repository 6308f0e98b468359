import { expect, it } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { squatTruth } from '../measure/knownRecording.ts';
import { recordedLibrary } from '../measure/measuredLibrary.ts';
import { ask, jobEnd, refusal, squatFile } from '../workbench.ts';

/** What the figure of the squat clip truly does: each rep's range over the seconds of its way up, the fastest of them. */
const trueMps = Math.max(
  ...squatTruth.reps.map(({ rom_m: romM, phases_s: { concentric } }) => romM / (concentric[1] - concentric[0])),
);

/** The recorded squat at 100 kg, and the same footage a week later at 90. */
async function twoLoads() {
  const library = await recordedLibrary();
  const { backend, traineeId, clipId } = library;
  const { sessionId: laterId } = await ask(backend, 'sessions.add', { traineeId, title: '', date: '2026-03-11' });
  const again = await importInto(backend, laterId);
  await ask(backend, 'clips.update', { clipId, change: { loadKg: 100 } });
  return { ...library, laterId, laterClipId: again };
}

async function importInto(backend: Backend, sessionId: string): Promise<string> {
  const asked = { sessionId, exercise: 'back-squat', view: 'side', paths: [squatFile] } as const;
  const { jobIds } = await ask(backend, 'clips.import', { ...asked, paths: [squatFile] });
  const { clipId } = await jobEnd(backend, jobIds[0] ?? '');
  if (clipId === null) throw new Error('The clip was not imported.');
  return clipId;
}

it('tells the speed of each set beside its load, once there are two loads', async () => {
  const { backend, traineeId, sessionId, clipId, laterId, laterClipId } = await twoLoads();
  expect(await ask(backend, 'trainees.speeds', { traineeId })).toEqual([]);
  await ask(backend, 'clips.update', { clipId: laterClipId, change: { loadKg: 90 } });
  const sets = await ask(backend, 'trainees.speeds', { traineeId });
  expect(sets.map(({ fastestMps: _, ...set }) => set)).toEqual([
    { clipId, sessionId, date: '2026-03-04', exercise: 'back-squat', loadKg: 100 },
    { clipId: laterClipId, sessionId: laterId, date: '2026-03-11', exercise: 'back-squat', loadKg: 90 },
  ]);
  for (const { fastestMps } of sets) expect(Math.abs(fastestMps / trueMps - 1)).toBeLessThan(0.05);
});

it('measures anew once what the measures rest on has changed', async () => {
  const { backend, traineeId, clipId, laterClipId } = await twoLoads();
  await ask(backend, 'clips.update', { clipId: laterClipId, change: { loadKg: 90 } });
  const before = await ask(backend, 'trainees.speeds', { traineeId });
  expect(await ask(backend, 'trainees.speeds', { traineeId })).toEqual(before);
  // A disc of 40 cm in place of 45 makes everything eight ninths as far; one of 90 would be no disc beside this lifter.
  await ask(backend, 'measures.setUp', { clipId, change: { discDiameterM: 0.4 } });
  const after = await ask(backend, 'trainees.speeds', { traineeId });
  expect((after[0]?.fastestMps ?? 0) / (before[0]?.fastestMps ?? 0)).toBeCloseTo(8 / 9, 6);
  expect(after[1]).toEqual(before[1]);
});

it('takes the load of the plan where a clip has none of its own', async () => {
  const { backend, traineeId, laterId } = await twoLoads();
  const { review } = await ask(backend, 'review.get', { sessionId: laterId });
  const entryId = review.entries[0]?.id ?? '';
  await ask(backend, 'entries.update', { entryId, plan: { sets: 3, reps: 8, loadKg: 80 } });
  const sets = await ask(backend, 'trainees.speeds', { traineeId });
  expect(sets.map(({ loadKg }) => loadKg)).toEqual([100, 80]);
});

it('takes the load of the set in its place where each planned set was filmed, and none where that is not known', async () => {
  const { backend, traineeId, laterId } = await twoLoads();
  const { review } = await ask(backend, 'review.get', { sessionId: laterId });
  const entryId = review.entries[0]?.id ?? '';
  const sets = [
    { reps: 8, loadKg: 90 },
    { reps: 12, loadKg: 70 },
  ];
  const loads = async () => (await ask(backend, 'trainees.speeds', { traineeId })).map(({ loadKg }) => loadKg);
  // Two sets were planned and one was filmed: it may show either.
  await ask(backend, 'entries.update', { entryId, plan: { sets } });
  expect(await loads()).toEqual([]);
  await ask(backend, 'entries.update', { entryId, plan: { sets: [...sets, { reps: 15, loadKg: 60 }].slice(1, 2) } });
  expect(await loads()).toEqual([100, 70]);
  // Sets that differ in reps alone have one load.
  await ask(backend, 'entries.update', { entryId, plan: { sets: sets.map((set) => ({ ...set, loadKg: 85 })) } });
  expect(await loads()).toEqual([100, 85]);
});

it('keeps nothing of a clip that goes, and knows no trainee that is not there', async () => {
  const { backend, traineeId, laterClipId } = await twoLoads();
  await ask(backend, 'clips.update', { clipId: laterClipId, change: { loadKg: 90 } });
  await ask(backend, 'trainees.speeds', { traineeId });
  await ask(backend, 'clips.remove', { clipId: laterClipId });
  expect(await ask(backend, 'trainees.speeds', { traineeId })).toEqual([]);
  expect((await refusal(backend, 'trainees.speeds', { traineeId: 'nobody' })).code).toBe('not-found');
});

it('changes what is known of a trainee, in every session of theirs, and tells of each', async () => {
  const { backend, traineeId, sessionId } = await recordedLibrary();
  const told: string[] = [];
  backend.onEvent((event) => told.push(event.name));
  await ask(backend, 'trainees.update', { traineeId, units: 'lb', equipment: 'home' });
  const traineeNow = async () => (await ask(backend, 'review.get', { sessionId })).review.trainee;
  expect(await traineeNow()).toMatchObject({ name: 'Mira Holt', goal: 'growth', units: 'lb', equipment: 'home' });
  expect(told).toEqual(expect.arrayContaining(['traineesChanged', 'sessionChanged']));
  expect(await ask(backend, 'desk.trainees', {})).toMatchObject([{ id: traineeId, equipment: 'home' }]);

  await ask(backend, 'trainees.update', { traineeId, goal: 'strength', equipment: null });
  expect(await traineeNow()).toMatchObject({ goal: 'strength', units: 'lb' });
  expect(await traineeNow()).not.toHaveProperty('equipment');
  // What the desk shows of each session was computed anew with it.
  expect(await ask(backend, 'library.verify', {})).toMatchObject({ sound: true, findings: [] });
});
