import { expect, it } from 'vitest';
import {
  ask,
  dump,
  historyOf,
  libraryWithClips,
  newLibrary,
  newSession,
  refusal,
  sessionWithClips,
  temporaryFolder,
} from '../workbench.ts';

it('keeps a plan and sets done, and lets both go again', async () => {
  const backend = await newLibrary();
  const { sessionId, entryId } = await newSession(backend);
  const plan = { sets: 3, reps: 8, loadKg: 82.5, tempo: '3-1-X-0', repsInReserve: 2 };
  await ask(backend, 'entries.update', { entryId, plan, setsDone: 2 });
  const full = await ask(backend, 'review.get', { sessionId });
  const set = { reps: 8, loadKg: 82.5, tempo: '3-1-X-0', repsInReserve: 2 };
  expect(full.review.entries[0]).toMatchObject({
    exercise: 'back-squat',
    plan: { sets: [set, set, set] },
    setsDone: 2,
  });
  await ask(backend, 'entries.update', { entryId, plan: null, setsDone: null });
  const bare = await ask(backend, 'review.get', { sessionId });
  expect(bare.review.entries[0]).toEqual({ id: entryId, exercise: 'back-squat', clips: [], flags: [], ticks: [] });
});

it('keeps a plan whose sets differ, and undo brings back the one before', async () => {
  const backend = await newLibrary();
  const { sessionId, entryId } = await newSession(backend);
  const planNow = async () => (await ask(backend, 'review.get', { sessionId })).review.entries[0]?.plan;
  const plan = {
    sets: [
      { reps: 10, loadKg: 20 },
      { reps: 15, loadKg: 12 },
      { reps: 20, loadKg: 0 },
    ],
  };
  await ask(backend, 'entries.update', { entryId, plan: { sets: 2, reps: 5 } });
  await ask(backend, 'entries.update', { entryId, plan });
  expect(await planNow()).toEqual(plan);
  await ask(backend, 'history.undo', { sessionId });
  expect(await planNow()).toEqual({ sets: [{ reps: 5 }, { reps: 5 }] });
  await ask(backend, 'history.redo', { sessionId });
  expect(await planNow()).toEqual(plan);
});

it('removes an exercise with its clips and flags in one act, and undo brings all of it back', async () => {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const { sessionId, entryId, clipId } = await sessionWithClips(backend);
  await ask(backend, 'flags.add', { clipId, criterion: 'depth', severity: 'adjust', reps: 'set', frame: 9 });
  const before = dump(folder);
  await ask(backend, 'entries.remove', { entryId });
  expect((await historyOf(backend, sessionId)).undo).toBe('Exercise removed: Back squat');
  expect((await ask(backend, 'review.get', { sessionId })).review.entries).toEqual([]);
  await ask(backend, 'history.undo', { sessionId });
  expect(dump(folder)).toBe(before);
});

it('parks what means nothing for another exercise, and brings it back with the first one', async () => {
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const { sessionId, entryId, clipId } = await sessionWithClips(backend);
  const flag = { clipId, severity: 'adjust', reps: 'set', frame: 9 } as const;
  await ask(backend, 'flags.add', { ...flag, criterion: 'barPath' });
  await ask(backend, 'flags.add', { ...flag, criterion: 'depth' });
  await ask(backend, 'ticks.set', { clipId, criterion: 'barPath', reps: 'set', fine: true });
  const judgedSquat = dump(folder);
  const judged = async () => {
    const { review } = await ask(backend, 'review.get', { sessionId });
    const { flags, ticks } = await ask(backend, 'parked.get', { sessionId });
    return {
      counting: [...(review.entries[0]?.flags ?? []), ...(review.entries[0]?.ticks ?? [])].map((one) => one.criterion),
      parked: [...flags, ...ticks].map((one) => one.criterion),
    };
  };
  // A sled on rails has no bar path to judge.
  await ask(backend, 'entries.update', { entryId, exercise: 'leg-press' });
  expect(await judged()).toEqual({ counting: ['depth'], parked: ['barPath', 'barPath'] });
  // By way of a third exercise, too: what counts depends on the exercise alone.
  await ask(backend, 'entries.update', { entryId, exercise: 'front-squat' });
  expect(await judged()).toEqual({ counting: ['barPath', 'depth', 'barPath'], parked: [] });
  await ask(backend, 'entries.update', { entryId, exercise: 'back-squat' });
  expect(dump(folder)).toBe(judgedSquat);
});

it('discards what is parked for good where a person says so, and undo brings it back parked', async () => {
  const { backend, sessionId, entryId, clipId } = await libraryWithClips();
  await ask(backend, 'flags.add', { clipId, criterion: 'barPath', severity: 'adjust', reps: 'set', frame: 9 });
  await ask(backend, 'entries.update', { entryId, exercise: 'leg-press' });
  await ask(backend, 'parked.discard', { clipId });
  expect(await ask(backend, 'parked.get', { sessionId })).toEqual({ flags: [], ticks: [] });
  await ask(backend, 'history.undo', { sessionId });
  expect((await ask(backend, 'parked.get', { sessionId })).flags).toMatchObject([
    { clip: clipId, criterion: 'barPath' },
  ]);
});

it('refuses an exercise that the library does not hold', async () => {
  const backend = await newLibrary();
  const { sessionId } = await newSession(backend);
  const problem = await refusal(backend, 'entries.add', { sessionId, exercise: 'moon-walk' });
  expect(problem).toMatchObject({ code: 'bad-request', sentence: expect.stringContaining('“moon-walk”') });
});

it('keeps the notes of a session', async () => {
  const backend = await newLibrary();
  const { sessionId } = await newSession(backend);
  const change = { title: 'Heavy legs', date: '2026-03-05', notes: 'Slept badly', painNote: 'Left knee felt odd' };
  await ask(backend, 'sessions.update', { sessionId, ...change });
  expect((await historyOf(backend, sessionId)).undo).toBe('Session: title, date, notes and pain note');
  const { review } = await ask(backend, 'review.get', { sessionId });
  expect(review.session).toEqual({ id: sessionId, ...change });
  expect(review).toMatchObject({ voice: 'coach', coach: 'Ada Quill' });
});

it('keeps what was at hand on the day, lets it go again, and undoes both', async () => {
  const backend = await newLibrary();
  const { sessionId } = await newSession(backend);
  const sessionNow = async () => (await ask(backend, 'review.get', { sessionId })).review.session;
  await ask(backend, 'sessions.update', { sessionId, equipment: ['dumbbells', 'bench'] });
  expect(await sessionNow()).toMatchObject({ equipment: ['dumbbells', 'bench'] });
  expect((await historyOf(backend, sessionId)).undo).toBe('Session: equipment');
  await ask(backend, 'sessions.update', { sessionId, equipment: null });
  expect(await sessionNow()).not.toHaveProperty('equipment');
  await ask(backend, 'history.undo', { sessionId });
  expect(await sessionNow()).toMatchObject({ equipment: ['dumbbells', 'bench'] });
  await ask(backend, 'history.undo', { sessionId });
  expect(await sessionNow()).not.toHaveProperty('equipment');
});
