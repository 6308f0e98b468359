import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it, vi } from 'vitest';
import { errorFacts, openLog } from '../../../../electron/backend/log/log.ts';
import { logIfSlow, logSlowQueries } from '../../../../electron/backend/log/slowness.ts';

import { all, closeReading, openReading, openWriting } from '../../../../electron/backend/store/connection.ts';
import { ProblemError } from '../../../../electron/contract/reply.ts';
import { ask, backendOn, newLibrary, newSession, refusal, temporaryFolder } from '../workbench.ts';

const linesOf = (file: string): string[] => readFileSync(file, 'utf8').trimEnd().split('\n');

it('writes a line with time, level, words and facts', () => {
  const file = path.join(temporaryFolder(), 'rackside.log');
  const log = openLog(file);
  log.info('opened', { version: '1.2.3' });
  log.error('broke');
  expect(linesOf(file)).toEqual([
    expect.stringMatching(/^\d{4}-\d\d-\d\dT[\d:.]+Z info opened \{"version":"1.2.3"\}$/),
    expect.stringMatching(/^\d{4}-\d\d-\d\dT[\d:.]+Z error broke$/),
  ]);
});

it('turns over at a megabyte and keeps the file before', () => {
  const file = path.join(temporaryFolder(), 'rackside.log');
  writeFileSync(file, `${'x'.repeat(1_000_001)}\n`);
  openLog(file).info('opened');
  expect(linesOf(file)).toHaveLength(1);
  expect(statSync(file.replace('.log', '.old.log')).size).toBe(1_000_002);
});

it('names a slow query by its text, without what it was asked with', () => {
  const file = path.join(temporaryFolder(), 'library.sqlite');
  const writing = openWriting(file);
  const reading = openReading(file);
  const log = { info: vi.fn(), warn: vi.fn(), error: vi.fn() };
  logSlowQueries({ reading, writing }, log);
  const count = `WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < ?)
    SELECT count(*) FROM n WHERE ? <> ''`;
  all(reading, count, 5, 'Mira Holt');
  expect(log.warn).not.toHaveBeenCalled();
  all(reading, count, 2_000_000, 'Mira Holt');
  const sql = expect.stringMatching(/^WITH RECURSIVE n\(i\) AS .* WHERE \? <> ''$/);
  expect(log.warn.mock.calls).toEqual([['slow query', { sql, ms: expect.any(Number) }]]);
  closeReading(reading);
});

it('names a request that took more than a tenth of a second', () => {
  const log = { info: vi.fn(), warn: vi.fn(), error: vi.fn() };
  logIfSlow(log, 'review.get', 99);
  logIfSlow(log, 'library.verify', 150.4);
  expect(log.warn.mock.calls).toEqual([['slow request', { name: 'library.verify', ms: 150 }]]);
});

it('tells of an error where it came from, never what it says', () => {
  const cause = Object.assign(new Error('ENOENT: /home/mira/clips'), { code: 'ENOENT' });
  const facts = errorFacts(
    new ProblemError('disk', 'pictureMissing', { what: 'clip', clip: 'Mira’s clip' }, { cause }),
  );
  expect(facts).toMatchObject({ kind: 'ProblemError', at: expect.stringContaining('(log.test.ts:') });
  const said = JSON.stringify(facts);
  expect(said).toContain('ENOENT');
  for (const word of ['Mira', 'mira', 'clips', '/']) expect(said.replaceAll('\\', '')).not.toContain(word);
});

it('holds nothing of people, whatever was asked and whatever broke', async () => {
  const stderr = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  const folder = temporaryFolder();
  const backend = await newLibrary(folder);
  const { sessionId } = await newSession(backend);
  await ask(backend, 'sessions.update', { sessionId, title: 'Quillwort', notes: 'Slept badly', painNote: 'Left knee' });
  await refusal(backend, 'clips.import', { sessionId, exercise: 'moon-walk', paths: ['/home/mira/holt.mp4'] });
  const database = new Database(path.join(folder, 'rackside.sqlite'));
  database.exec('ALTER TABLE entry RENAME TO entry_of_mira');
  database.close();
  expect((await refusal(backend, 'review.get', { sessionId })).code).toBe('internal');
  await backend.close();
  const text = readFileSync(path.join(folder, 'rackside.log'), 'utf8');
  expect(text).toMatch(/ error request failed \{"name":"review.get","kind":"\w+"/);
  for (const word of ['Mira', 'Holt', 'Quill', 'Slept', 'knee', 'Legs', 'holt.mp4', folder])
    expect(text).not.toContain(word);
  expect(stderr).toHaveBeenCalled();
  stderr.mockRestore();
});

it('leaves a folder without a library as it is', async () => {
  const folder = temporaryFolder();
  const backend = backendOn(folder);
  await refusal(backend, 'desk.trainees', {});
  await backend.close();
  expect(existsSync(path.join(folder, 'rackside.log'))).toBe(false);
});
