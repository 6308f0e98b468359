import { readdirSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { alterLibrary } from '../alterLibrary.ts';
import {
  appFolder,
  ask,
  backendOn,
  copyOf,
  dump,
  hingeFile,
  historyOf,
  libraryWithClips,
  newLibrary,
  preparedLibrary,
  refusal,
  sessionWithClips,
  squatFile,
  temporaryFolder,
} from '../workbench.ts';

const deskIds = async (backend: Backend) =>
  (await ask(backend, 'desk.sessions', { list: 'due' })).sessions.map(({ id }) => id);

/** Makes what lies in the bin of a closed library look as if it had been removed so many days ago. */
function age(folder: string, days: number): void {
  const then = new Date(Date.now() - days * 24 * 60 * 60 * 1000).toISOString();
  for (const table of ['session', 'entry', 'clip']) {
    alterLibrary(folder, `UPDATE ${table} SET removed_at = '${then}' WHERE removed_at IS NOT NULL`);
  }
}

/** A library after the bin was emptied at its opening, which goes on behind the requests and ends with the files. */
async function emptied(folder: string): Promise<Backend> {
  const backend = backendOn(folder);
  for (let turn = 0; turn < 20; turn += 1) await new Promise(setImmediate);
  return backend;
}

describe('a session in the bin', () => {
  it('is nowhere but there, and comes back by undo at the desk after a restart', async () => {
    const folder = temporaryFolder();
    const backend = await newLibrary(folder);
    const { sessionId, clipId, traineeId } = await sessionWithClips(backend);
    const before = dump(folder);
    await ask(backend, 'sessions.remove', { sessionId });
    expect(await deskIds(backend)).toEqual([]);
    expect((await refusal(backend, 'review.get', { sessionId })).code).toBe('not-found');
    expect((await refusal(backend, 'reps.mark', { clipId, edge: 'start', frame: 24 })).code).toBe('not-found');
    expect((await ask(backend, 'trainees.history', { traineeId })).points).toEqual([]);
    expect(await ask(backend, 'bin.list', {})).toMatchObject([
      { kind: 'session', id: sessionId, clips: 1, daysLeft: 30 },
    ]);
    await backend.close();

    const again = backendOn(folder);
    await ask(again, 'desk.undo', {});
    expect(dump(folder)).toBe(before);
    expect(await deskIds(again)).toEqual([sessionId]);
  });

  it('takes its second look with it, and brings it back', async () => {
    const { backend, sessionId, clipId } = await libraryWithClips();
    await ask(backend, 'ticks.set', { clipId, criterion: 'depth', reps: 'set', fine: true });
    await ask(backend, 'secondLook.start', { sessionId });
    const looks = async () => (await ask(backend, 'desk.sessions', { list: 'secondLooks' })).sessions.length;
    await ask(backend, 'sessions.remove', { sessionId });
    expect(await looks()).toBe(0);
    expect(await ask(backend, 'bin.list', {})).toHaveLength(1);
    await ask(backend, 'bin.restore', { kind: 'session', id: sessionId });
    expect(await looks()).toBe(1);
    expect(await ask(backend, 'bin.list', {})).toEqual([]);
  });

  it('is not brought back by the desk once something else was done in it', async () => {
    const { backend, sessionId, clipId } = await libraryWithClips();
    await ask(backend, 'sessions.remove', { sessionId });
    await ask(backend, 'bin.restore', { kind: 'session', id: sessionId });
    await ask(backend, 'reps.mark', { clipId, edge: 'start', frame: 24 });
    expect((await refusal(backend, 'desk.undo', {})).sentence).toContain('Legs');
    expect(await deskIds(backend)).toEqual([sessionId]);
  });
});

describe('clips and exercises in the bin', () => {
  it('come back in any order, each where it was', async () => {
    const { backend, sessionId, entryId, clipId, clipIds } = await libraryWithClips([squatFile, hingeFile]);
    await ask(backend, 'clips.remove', { clipId });
    await ask(backend, 'entries.remove', { entryId });
    // A clip whose exercise lies there too is told with it.
    expect(await ask(backend, 'bin.list', {})).toMatchObject([{ kind: 'entry', id: entryId }]);
    await ask(backend, 'bin.restore', { kind: 'entry', id: entryId });
    await ask(backend, 'bin.restore', { kind: 'clip', id: clipId });
    const { review } = await ask(backend, 'review.get', { sessionId });
    expect(review.entries.map(({ clips }) => clips.map(({ id }) => id))).toEqual([clipIds]);
    expect((await historyOf(backend, sessionId)).undo).toBe('Clip brought back: squat-side.mp4');
  });

  it('are removed from the queue of what is measured', async () => {
    const { backend, clipIds } = await libraryWithClips([squatFile, hingeFile]);
    for (const clipId of clipIds) await ask(backend, 'measures.start', { clipIds: [clipId] });
    for (const clipId of clipIds) await ask(backend, 'clips.remove', { clipId });
    const open = (await ask(backend, 'jobs.list', {})).filter(({ state }) => state === 'waiting');
    expect(open).toEqual([]);
  });
});

describe('emptying the bin', () => {
  it('leaves alone what has lain in it for less than thirty days', async () => {
    const { folder, sessionId } = await preparedLibrary();
    const copy = copyOf(folder);
    const first = openBackend({ libraryFolder: copy, appFolder });
    await ask(first, 'sessions.remove', { sessionId });
    await first.close();
    age(copy, 29);
    const backend = backendOn(copy);
    expect(await ask(backend, 'bin.list', {})).toMatchObject([{ daysLeft: 1 }]);
    await ask(backend, 'bin.restore', { kind: 'session', id: sessionId });
    expect((await ask(backend, 'library.verify', {})).findings).toEqual([]);
  });

  it('deletes a session with all that hangs on it, and its footage', async () => {
    const { folder, sessionId, clipId } = await preparedLibrary();
    const first = openBackend({ libraryFolder: folder, appFolder });
    await ask(first, 'reps.mark', { clipId, edge: 'start', frame: 24 });
    await ask(first, 'flags.add', { clipId, criterion: 'depth', severity: 'adjust', reps: [1], frame: 70 });
    await ask(first, 'covers.add', { clipId, cover: { kind: 'head' }, look: 'filled' });
    await ask(first, 'letters.send', { sessionId });
    await ask(first, 'secondLook.start', { sessionId });
    await ask(first, 'sessions.remove', { sessionId });
    await first.close();
    age(folder, 31);
    const backend = await emptied(folder);
    expect(await ask(backend, 'bin.list', {})).toEqual([]);
    for (const each of ['clips', 'pictures']) expect(readdirSync(path.join(folder, each))).toEqual([]);
    const database = new Database(path.join(folder, 'rackside.sqlite'), { readonly: true });
    const left = [
      'session',
      'entry',
      'clip',
      'rep',
      'flag',
      'footage',
      'sent_letter',
      'act_also',
      'file_to_remove',
    ].filter((table) => database.prepare(`SELECT 1 FROM ${table}`).get() !== undefined);
    database.close();
    expect(left).toEqual([]);
    expect((await ask(backend, 'library.verify', {})).findings).toEqual([]);
  });

  it('keeps footage that another clip shows, and undo stops at what is gone', async () => {
    const { folder, sessionId, clipId, entryId } = await preparedLibrary();
    const first = openBackend({ libraryFolder: folder, appFolder });
    await ask(first, 'ticks.set', { clipId, criterion: 'depth', reps: 'set', fine: true });
    await ask(first, 'secondLook.start', { sessionId });
    await ask(first, 'entries.update', { entryId, setsDone: 2 });
    await ask(first, 'clips.remove', { clipId });
    await ask(first, 'sessions.update', { sessionId, notes: 'Slept badly.' });
    await first.close();
    age(folder, 31);
    const backend = await emptied(folder);
    expect(await ask(backend, 'bin.list', {})).toEqual([]);
    expect(readdirSync(path.join(folder, 'clips'))).toHaveLength(1);
    await ask(backend, 'history.undo', { sessionId });
    expect((await refusal(backend, 'history.undo', { sessionId })).code).toBe('conflict');
    expect((await ask(backend, 'library.verify', {})).findings).toEqual([]);
  });
});
