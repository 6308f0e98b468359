import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import type { Backend } from '../../../../electron/contract/backend.ts';
import {
  appFolder,
  ask,
  backendOn,
  copyOf,
  dump,
  hingeFile,
  historyOf,
  refusal,
  sessionWithClips,
  squatFile,
} from '../workbench.ts';

/** Exercises of a session with the names of their clips, in order. */
const shown = async (backend: Backend, sessionId: string) =>
  (await ask(backend, 'review.get', { sessionId })).review.entries.map(({ exercise, clips }) => [
    exercise,
    ...clips.map(({ name }) => name),
  ]);

const squat = 'squat-side.mp4';
const hinge = 'hinge-side.mp4';

let made: Awaited<ReturnType<typeof sessionWithClips>>;
let original = '';

/** One library with the clips of a session, to be copied for each case: reading clips takes long. */
beforeAll(async () => {
  original = mkdtempSync(path.join(tmpdir(), 'rackside-arranging-'));
  const backend = openBackend({ libraryFolder: original, appFolder });
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  made = await sessionWithClips(backend, [squatFile, hingeFile]);
  await backend.close();
});
afterAll(() => rmSync(original, { recursive: true, force: true }));

async function twoSessions() {
  const folder = copyOf(original);
  const backend = backendOn(folder);
  const one = made;
  const { sessionId: otherId } = await ask(backend, 'sessions.add', {
    traineeId: one.traineeId,
    title: 'Evening',
    date: '2026-03-04',
  });
  return { folder, backend, ...one, otherId, hingeId: one.clipIds[1] ?? '' };
}

describe('a clip', () => {
  it('moves within its exercise', async () => {
    const { backend, sessionId, entryId, clipId, hingeId } = await twoSessions();
    await ask(backend, 'clips.move', { clipId: hingeId, to: { kind: 'entry', entryId, before: clipId } });
    expect(await shown(backend, sessionId)).toEqual([['back-squat', hinge, squat]]);
    await ask(backend, 'clips.move', { clipId: hingeId, to: { kind: 'entry', entryId } });
    expect(await shown(backend, sessionId)).toEqual([['back-squat', squat, hinge]]);
  });

  it('is judged as another exercise in an entry made for it, which goes again with its last clip', async () => {
    const { backend, sessionId, hingeId } = await twoSessions();
    const exercise = 'romanian-deadlift';
    await ask(backend, 'clips.move', { clipId: hingeId, to: { kind: 'exercise', exercise } });
    expect(await shown(backend, sessionId)).toEqual([
      ['back-squat', squat],
      [exercise, hinge],
    ]);
    await ask(backend, 'clips.move', { clipId: hingeId, to: { kind: 'exercise', exercise: 'back-squat' } });
    expect(await shown(backend, sessionId)).toEqual([['back-squat', squat, hinge]]);
  });

  it('moves to another session in one act, taken back from either side', async () => {
    const { folder, backend, sessionId, otherId, hingeId } = await twoSessions();
    const before = dump(folder);
    for (const side of [sessionId, otherId]) {
      await ask(backend, 'clips.move', { clipId: hingeId, to: { kind: 'session', sessionId: otherId } });
      expect(await shown(backend, otherId)).toEqual([['back-squat', hinge]]);
      const named = 'Clip moved: hinge-side.mp4';
      for (const id of [sessionId, otherId]) expect((await historyOf(backend, id)).undo).toBe(named);
      await ask(backend, 'history.undo', { sessionId: side });
      expect(dump(folder)).toBe(before);
    }
  });

  it('stays where it came to while the other session has changed since, and comes back after that is undone', async () => {
    const { folder, backend, sessionId, otherId, hingeId } = await twoSessions();
    const before = dump(folder);
    await ask(backend, 'clips.move', { clipId: hingeId, to: { kind: 'session', sessionId: otherId } });
    await ask(backend, 'reps.mark', { clipId: hingeId, edge: 'start', frame: 24 });
    const refused = await refusal(backend, 'history.undo', { sessionId });
    expect(refused).toMatchObject({ code: 'conflict', sentence: expect.stringContaining('“Evening” of 2026-03-04') });
    await ask(backend, 'history.undo', { sessionId: otherId });
    await ask(backend, 'history.undo', { sessionId });
    expect(dump(folder)).toBe(before);
  });

  it('tells both sessions, and both count as changed since they were sent', async () => {
    const { backend, sessionId, otherId, hingeId } = await twoSessions();
    const told: string[] = [];
    const stop = backend.onEvent((event) => {
      if (event.name === 'sessionChanged') told.push(event.data.sessionId);
    });
    await ask(backend, 'clips.move', { clipId: hingeId, to: { kind: 'session', sessionId: otherId } });
    stop();
    expect(new Set(told)).toEqual(new Set([sessionId, otherId]));
    const { sessions } = await ask(backend, 'desk.sessions', { list: 'due' });
    expect(Object.fromEntries(sessions.map(({ id, clips }) => [id, clips]))).toEqual({ [sessionId]: 1, [otherId]: 1 });
  });
});

describe('exercises', () => {
  it('change their order, and move to another session', async () => {
    const { backend, sessionId, otherId, entryId } = await twoSessions();
    const { entryId: second } = await ask(backend, 'entries.add', { sessionId, exercise: 'bench-press' });
    await ask(backend, 'entries.move', { entryId: second, before: entryId });
    expect((await shown(backend, sessionId)).map(([exercise]) => exercise)).toEqual(['bench-press', 'back-squat']);
    await ask(backend, 'entries.move', { entryId, sessionId: otherId });
    expect(await shown(backend, otherId)).toEqual([['back-squat', squat, hinge]]);
    expect(await shown(backend, sessionId)).toEqual([['bench-press']]);
  });

  it('of one kind become one, with the plan of whichever has it and the sets of both', async () => {
    const { backend, sessionId, entryId, hingeId } = await twoSessions();
    const { entryId: second } = await ask(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
    await ask(backend, 'clips.move', { clipId: hingeId, to: { kind: 'entry', entryId: second } });
    await ask(backend, 'entries.update', { entryId: second, plan: { sets: 3, reps: 5 }, setsDone: 2 });
    await ask(backend, 'entries.update', { entryId, setsDone: 1 });
    await ask(backend, 'entries.merge', { entryId: second, into: entryId });
    const { review } = await ask(backend, 'review.get', { sessionId });
    const set = { reps: 5 };
    expect(review.entries).toMatchObject([{ id: entryId, setsDone: 3, plan: { sets: [set, set, set] } }]);
    expect(await shown(backend, sessionId)).toEqual([['back-squat', squat, hinge]]);
  });

  it('of two kinds stay apart', async () => {
    const { backend, sessionId, entryId } = await twoSessions();
    const { entryId: second } = await ask(backend, 'entries.add', { sessionId, exercise: 'bench-press' });
    expect((await refusal(backend, 'entries.merge', { entryId: second, into: entryId })).code).toBe('conflict');
  });
});

describe('sessions', () => {
  it('of one day become one: the other lies in the bin, and undo at the desk parts them again', async () => {
    const { folder, backend, sessionId, otherId } = await twoSessions();
    await ask(backend, 'sessions.update', { sessionId: otherId, notes: 'Slept badly.' });
    const before = dump(folder);
    await ask(backend, 'sessions.merge', { sessionId, into: otherId });
    expect(await shown(backend, otherId)).toEqual([['back-squat', squat, hinge]]);
    expect(await ask(backend, 'bin.list', {})).toMatchObject([{ kind: 'session', id: sessionId, clips: 0 }]);
    await ask(backend, 'desk.undo', {});
    expect(dump(folder)).toBe(before);
  });

  it('stay two where a letter of the emptied one was sent, and become one the other way round', async () => {
    const { folder, backend, sessionId, otherId } = await twoSessions();
    await ask(backend, 'letters.send', { sessionId });
    const before = dump(folder);
    const { sentence } = await refusal(backend, 'sessions.merge', { sessionId, into: otherId });
    expect(sentence).toMatch(/letter .* was sent.*merge the other session into this one/);
    expect(dump(folder)).toBe(before);
    await ask(backend, 'sessions.merge', { sessionId: otherId, into: sessionId });
  });

  it('that nobody waits for are finished without a letter: due no more, until undo or taking up', async () => {
    const { folder, backend, sessionId, otherId } = await twoSessions();
    const list = async (name: 'due' | 'done') =>
      (await ask(backend, 'desk.sessions', { list: name })).sessions.map(({ id, finished }) => [id, finished]);
    const both = [sessionId, otherId].sort();
    const before = dump(folder);
    await ask(backend, 'sessions.finish', { sessionId, finished: true });
    expect(await list('due')).toEqual([[otherId, false]]);
    expect(await list('done')).toEqual([[sessionId, true]]);
    expect((await ask(backend, 'library.verify', {})).findings).toEqual([]);
    await ask(backend, 'desk.undo', {});
    expect(dump(folder)).toBe(before);
    expect((await list('due')).map(([id]) => id).sort()).toEqual(both);
    await ask(backend, 'desk.redo', {});
    expect(await list('done')).toEqual([[sessionId, true]]);
    await ask(backend, 'sessions.finish', { sessionId, finished: false });
    expect((await list('due')).map(([id]) => id).sort()).toEqual(both);
  });

  it('are done again in the order in which undo took them back, until something else is done at the desk', async () => {
    const { folder, backend, sessionId, otherId } = await twoSessions();
    const rename = (title: string) => ask(backend, 'sessions.rename', { sessionId, title });
    expect((await refusal(backend, 'desk.redo', {})).sentence).toMatch(/Nothing was undone here/);
    await rename('One');
    await ask(backend, 'sessions.remove', { sessionId: otherId });
    const after = dump(folder);
    for (let step = 0; step < 2; step += 1) await ask(backend, 'desk.undo', {});
    const names = [];
    for (let step = 0; step < 2; step += 1) names.push((await ask(backend, 'desk.redo', {})).name.id);
    expect(names).toEqual(['sessionChanged', 'sessionRemoved']);
    expect(dump(folder)).toBe(after);
    await ask(backend, 'desk.undo', {});
    await rename('Two');
    expect((await refusal(backend, 'desk.redo', {})).code).toBe('conflict');
  });

  it('of two days stay apart', async () => {
    const { backend, sessionId, otherId } = await twoSessions();
    await ask(backend, 'sessions.update', { sessionId: otherId, date: '2026-03-05' });
    expect((await refusal(backend, 'sessions.merge', { sessionId, into: otherId })).code).toBe('conflict');
  });

  it('go to another trainee, and stand in that one’s history', async () => {
    const { backend, sessionId, traineeId } = await twoSessions();
    const jonas = { name: 'Jonas Feld', goal: 'strength', experience: 'new', units: 'kg', minor: false } as const;
    const { traineeId: jonasId } = await ask(backend, 'trainees.add', jonas);
    await ask(backend, 'sessions.move', { sessionId, traineeId: jonasId });
    const sessionsOf = async (id: string) =>
      (await ask(backend, 'trainees.history', { traineeId: id })).points.map((point) => point.sessionId);
    expect(await sessionsOf(jonasId)).toEqual([sessionId]);
    expect(await sessionsOf(traineeId)).not.toContain(sessionId);
    await ask(backend, 'desk.undo', {});
    expect(await sessionsOf(jonasId)).toEqual([]);
  });
});
