import path from 'node:path';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import { judgingDataOf } from '../../../../electron/backend/catalogue/loadCatalogue.ts';
import { closeReading, openReading } from '../../../../electron/backend/store/connection.ts';
import { readContentHash, readKeptSummary } from '../../../../electron/backend/store/summaries.ts';
import { freshSummary } from '../../../../electron/backend/summaries/freshSummary.ts';
import type { AnyEvent } from '../../../../electron/contract/events.ts';
import { alterLibrary } from '../alterLibrary.ts';
import { step, take } from '../randomActs.ts';
import { appFolder, ask, backendOn, copyOf, hingeFile, preparedLibrary, squatFile } from '../workbench.ts';

const judging = judgingDataOf(appFolder);
const databaseOf = (folder: string) => path.join(folder, 'rackside.sqlite');

/** The summary kept of a session, beside one made from its rows alone. */
function summaries(folder: string, sessionId: string) {
  const reading = openReading(databaseOf(folder));
  try {
    return { kept: readKeptSummary(reading, sessionId), fresh: freshSummary(reading, sessionId, judging) };
  } finally {
    closeReading(reading);
  }
}

const change = (folder: string, sql: string): void => {
  alterLibrary(folder, sql);
};

it('keeps the summary that a fresh look gives, whatever was done, undone and done again', async () => {
  const { folder, sessionId } = await preparedLibrary([squatFile, hingeFile]);
  const acts = fc.array(fc.oneof({ weight: 4, arbitrary: step }, fc.constantFrom('undo', 'redo')), {
    minLength: 1,
    maxLength: 25,
    size: 'max',
  });
  await fc.assert(
    fc.asyncProperty(acts, async (steps) => {
      const copy = copyOf(folder);
      const backend = openBackend({ libraryFolder: copy, appFolder });
      for (const one of steps) {
        if (typeof one === 'string') await backend.ask(`history.${one}`, { sessionId });
        // Undone so far that there is no exercise, there is nothing to do it to.
        else if (summaries(copy, sessionId).fresh.exercises.length > 0) await take(backend, sessionId, one);
        const { kept, fresh } = summaries(copy, sessionId);
        expect(kept).toEqual(fresh);
      }
      await backend.close();
    }),
    { numRuns: 25 },
  );
});

it('makes summaries anew that other judging data made, and tells of each', async () => {
  const { folder, sessionId } = await preparedLibrary();
  const before = summaries(folder, sessionId).kept;
  change(folder, "UPDATE session_summary SET clips = 0, exercises = '[]', judging_sha256 = ''");
  const backend = openBackend({ libraryFolder: folder, appFolder });
  const told = await new Promise<AnyEvent>((resolve) => backend.onEvent(resolve));
  expect(told).toMatchObject({ name: 'sessionChanged', data: { sessionId, summary: { clips: 1 } } });
  await backend.close();
  expect(summaries(folder, sessionId).kept).toEqual(before);
});

it('shows no old summary on the desk, even before all are made anew', async () => {
  const { folder, sessionId } = await preparedLibrary();
  change(folder, "UPDATE session_summary SET clips = 0, judging_sha256 = ''");
  const { sessions } = await ask(backendOn(folder), 'desk.sessions', {});
  expect(sessions).toMatchObject([{ id: sessionId, clips: 1 }]);
});

it('is verified against a fresh look', async () => {
  const { folder } = await preparedLibrary();
  expect(await ask(backendOn(copyOf(folder)), 'library.verify', {})).toMatchObject({ sound: true, findings: [] });
  change(folder, 'UPDATE session_summary SET flags = 7');
  expect((await ask(backendOn(folder), 'library.verify', {})).findings).toEqual([
    'What the desk shows of 1 session does not match the flags and clips.',
  ]);
});

it('forgets what a session would hand over with a change to it, to its trainee, or to their other sessions', async () => {
  const { folder, sessionId, traineeId } = await preparedLibrary();
  const hash = 'a'.repeat(64);
  const contentAfter = async (act: (backend: ReturnType<typeof backendOn>) => Promise<unknown>) => {
    const copy = copyOf(folder);
    change(copy, `UPDATE session_summary SET content_sha256 = '${hash}'`);
    await act(backendOn(copy));
    const reading = openReading(databaseOf(copy));
    const content = readContentHash(reading, sessionId);
    closeReading(reading);
    return content;
  };
  const someone = { name: 'Someone else', goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;
  expect(await contentAfter((backend) => ask(backend, 'trainees.add', someone))).toBe(hash);
  expect(await contentAfter((backend) => ask(backend, 'sessions.update', { sessionId, notes: 'New' }))).toBeNull();
  expect(await contentAfter((backend) => ask(backend, 'trainees.names', { traineeId, names: 'none' }))).toBeNull();
  expect(await contentAfter((backend) => ask(backend, 'trainees.update', { traineeId, units: 'lb' }))).toBeNull();
  expect(await contentAfter((backend) => ask(backend, 'sessions.add', { traineeId, date: '2026-01-01' }))).toBeNull();
  expect(await contentAfter((backend) => ask(backend, 'history.undo', { sessionId }))).toBeNull();
});
