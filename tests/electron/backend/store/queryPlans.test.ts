import Database from 'better-sqlite3';
import * as v from 'valibot';
import { expect, it } from 'vitest';
import { judgingDataOf } from '../../../../electron/backend/catalogue/loadCatalogue.ts';
import type { Context } from '../../../../electron/backend/context/context.ts';
import type { Handler } from '../../../../electron/backend/handlers/handler.ts';
import { handlers } from '../../../../electron/backend/handlers/handlers.ts';
import { observeQueries } from '../../../../electron/backend/store/connection.ts';
import { digestOfRow } from '../../../../electron/backend/store/digestOfRow.ts';
import { readLetterShape } from '../../../../electron/backend/store/letters.ts';
import { type Library, openLibrary } from '../../../../electron/backend/store/library.ts';
import { readMigrations } from '../../../../electron/backend/store/migrations.ts';
import { keepSummaries } from '../../../../electron/backend/summaries/keepSummaries.ts';
import type { CheckedParams, Params, RequestName } from '../../../../electron/contract/requests.ts';
import { appFolder, preparedLibrary, squatFile } from '../workbench.ts';

const inboxFiles = v.object({ files: v.array(v.object({ arrivalId: v.string() })) });

/** Everything that is read whole by a request that says so: one row, a list that a person sees whole, what a session owns, the columns of a table. */
const readWhole: ReadonlySet<string> = new Set([
  'library',
  'setting',
  'trainee',
  'job',
  'asked',
  'owner_asked',
  'pragma_table_info',
]);

/** The context of handlers without a queue of jobs: what is put in line stays there. */
function contextOn(library: Library): Context {
  const nothing = () => undefined;
  return {
    settings: { libraryFolder: library.folder.root, appFolder },
    library: () => library,
    libraryState: () => ({ kind: 'none' }),
    createLibrary: () => library,
    mediaTools: () => Promise.reject(new Error('No request of this test needs ffmpeg.')),
    ...judgingDataOf(appFolder),
    watchedFolder: () => null,
    jobs: {
      add: () => 'job',
      tell: nothing,
      list: () => [],
      cancel: nothing,
      retry: nothing,
      dismiss: nothing,
      line: () => [],
      move: nothing,
      showing: nothing,
      pauseMeasuring: nothing,
      goOnMeasuring: nothing,
    },
    summariesRenewed: async () => undefined,
    emit: nothing,
  };
}

it('runs no query that grows with the library, whatever a screen asks', async () => {
  const { folder, sessionId, clipId, entryId, traineeId } = await preparedLibrary();
  const library = openLibrary(folder, appFolder);
  if (library === null) throw new Error('The library is gone.');
  const seen = new Set<string>();
  for (const each of [library.reading, library.writing]) observeQueries(each, ({ sql }) => seen.add(sql));
  const judging = judgingDataOf(appFolder);
  keepSummaries(library, judging);
  const context = contextOn(library);
  const ask = async <N extends RequestName>(name: N, params: Params<N>): Promise<unknown> => {
    const handler: Handler<N> = handlers[name];
    return handler(context, params as CheckedParams<N>);
  };
  const frames = { clipId, edge: 'start', frame: 24 } as const;
  const flag = { clipId, criterion: 'depth', fault: null, severity: 'adjust', frame: 70, note: '', cue: '' } as const;
  await ask('reps.mark', frames);
  await ask('flags.add', { ...flag, reps: [1] });
  await ask('ticks.set', { clipId, criterion: 'headPosition', reps: 'set', fine: true });
  await ask('entries.update', { entryId, setsDone: 2 });
  await ask('clips.update', { clipId, change: { name: 'Set 1' } });
  await ask('covers.add', { clipId, cover: { kind: 'head' }, look: 'filled' });
  await ask('measures.setUp', { clipId, change: { facing: 'left' } });
  await ask('sessions.update', { sessionId, notes: 'New' });
  await ask('letters.style', { sessionId, style: { tone: 'warm' } });
  await ask('letters.edit', { sessionId, paragraph: 'greeting', words: 'Dear Mira,' });
  await ask('letters.add', { sessionId, after: 'greeting' });
  const [{ id: paragraph = '' } = {}] = readLetterShape(library.reading, sessionId).own;
  await ask('letters.move', { sessionId, paragraph, after: 'opening' });
  await ask('letters.leaveOut', { sessionId, paragraph: 'opening' });
  await ask('letters.bringBack', { sessionId, paragraph: 'opening' });
  await ask('letters.remove', { sessionId, paragraph });
  await ask('trainees.names', { traineeId, names: 'initials' });
  await ask('names.doubts', { sessionIds: [sessionId], narrated: true });
  const place = { place: 'notes/', before: '', word: 'New', after: '' };
  await ask('names.decide', { sessionId, places: [place], is: 'noName' });
  await ask('letters.send', { sessionId });
  await ask('grades.override', { sessionId, entryId: null, override: { score: 80, reason: 'Agreed.' } });
  await ask('history.undo', { sessionId });
  await ask('history.redo', { sessionId });
  await ask('narrations.begin', { clipId });
  await ask('narrations.get', { clipId });
  await ask('position.set', { sessionId, clipId, frame: 3 });
  await ask('trainees.names', { traineeId, names: 'first' });
  await ask('trainees.update', { traineeId, units: 'lb' });
  await ask('secondLook.start', { sessionId });
  await ask('entries.update', { entryId, exercise: 'leg-press' });
  await ask('parked.get', { sessionId });
  await ask('parked.discard', { clipId });
  await ask('clips.move', { clipId, to: { kind: 'entry', entryId } });
  await ask('entries.move', { entryId });
  await ask('sessions.rename', { sessionId, title: 'Legs again' });
  await ask('sessions.finish', { sessionId, finished: true });
  await ask('sessions.move', { sessionId, traineeId });
  await ask('sessions.places', { sessionId });
  await ask('clips.remove', { clipId });
  await ask('bin.list', {});
  await ask('bin.restore', { kind: 'clip', id: clipId });
  await ask('sessions.remove', { sessionId });
  await ask('desk.undo', {});
  await ask('desk.redo', {});
  await ask('desk.undo', {});
  for (const list of ['newest', 'due', 'done', 'secondLooks'] as const)
    await ask('desk.sessions', { list, after: null, limit: 30 });
  await ask('handover.sessions', { after: null, limit: 30 });
  await ask('desk.session', { sessionId });
  await ask('night.next', { after: sessionId });
  await ask('night.left', {});
  await ask('desk.trainees', {});
  await ask('trainees.history', { traineeId });
  await ask('review.get', { sessionId });
  await ask('grade.get', { sessionId });
  await ask('clips.alike', { clipId });
  await ask('clips.frameTable', { clipId });
  await ask('measures.get', { clipId });
  await ask('letters.get', { sessionId });
  await ask('handover.list', { sessionId });
  await ask('history.list', { sessionId });
  await ask('secondLook.get', { sessionId });
  await ask('media.resolve', { clipId, what: 'poster' });
  await ask('inbox.take', { paths: [squatFile] });
  await ask('inbox.count', {});
  const inbox = await ask('inbox.get', {});
  const arrivalId = v.parse(inboxFiles, inbox).files[0]?.arrivalId ?? '';
  await ask('inbox.choose', { arrivalIds: [arrivalId], choice: { sessionId, exercise: 'back-squat' }, forget: [] });
  await ask('inbox.get', {});
  await ask('inbox.remove', { arrivalIds: [arrivalId] });
  await ask('inbox.putBack', { arrivalIds: [arrivalId] });
  await ask('inbox.readAgain', { arrivalIds: [arrivalId] });
  library.close();
  expect(seen.size).toBeGreaterThan(50);

  // Without the small library's own statistics, by which looking at all of its one row is as good as an index.
  const database = new Database(':memory:');
  database.function('digest_of_row', { varargs: true }, digestOfRow);
  for (const { sql } of readMigrations(appFolder)) database.exec(sql);
  const growing = [...seen].flatMap((sql) => {
    const values = Array.from(sql.matchAll(/\?/g), () => 1);
    const plan = database.prepare(`EXPLAIN QUERY PLAN ${sql}`).all(...values) as { detail: string }[];
    return plan
      .map(({ detail }) => detail)
      .filter((detail) => {
        const scanned = /^SCAN (\w+)/.exec(detail)?.[1];
        const isWhole = scanned !== undefined && scanned !== 'CONSTANT' && !readWhole.has(scanned);
        return isWhole || (sql.includes('LIMIT ?') && detail.startsWith('USE TEMP B-TREE'));
      })
      .map((detail) => `${detail}: ${sql.replaceAll(/\s+/g, ' ')}`);
  });
  database.close();
  expect(growing).toEqual([]);
});
