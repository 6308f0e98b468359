import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { factsOnlyRow } from '../../../../electron/backend/jobs/importFootage.ts';
import { closeWriting, openWriting, run } from '../../../../electron/backend/store/connection.ts';
import { insertFootage } from '../../../../electron/backend/store/footage.ts';
import { writeFrameTable } from '../../../../electron/backend/store/frameTables.ts';
import { digestAnew } from '../alterLibrary.ts';
import { ask, backendOn, newLibrary, newSession, refusal, temporaryFolder } from '../workbench.ts';

/** A library with one session whose tables were filled by statements, as an older version let them be. */
async function filled(fill: (database: Database.Database, ids: { sessionId: string; entryId: string }) => void) {
  const folder = temporaryFolder();
  const first = await newLibrary(folder);
  const session = await newSession(first);
  await first.close();
  const database = new Database(path.join(folder, 'rackside.sqlite'));
  database.transaction(() => fill(database, session))();
  database.close();
  giveFrames(folder);
  digestAnew(folder);
  return { backend: backendOn(folder), ...session };
}

const frames = 1200;
const timeBase = { numerator: 1, denominator: 30 };

/** Gives every clip the frames of one film, so that a moment can be named. */
function giveFrames(folder: string): void {
  const writing = openWriting(path.join(folder, 'rackside.sqlite'));
  const facts = {
    codec: 'h264',
    width: 64,
    height: 64,
    rotationDeg: 0,
    frames,
    timeBase,
    durationUs: 40_000_000,
  } as const;
  insertFootage(writing, { ...factsOnlyRow(facts), id: 'film' });
  const table = { timeBase, ticks: Array.from({ length: frames }, (_, frame) => frame), endTicks: frames };
  writeFrameTable(writing, 'film', 'original', table);
  run(writing, "UPDATE clip SET footage_id = 'film'");
  closeWriting(writing);
}

const addEntries =
  (count: number) =>
  (database: Database.Database, { sessionId }: { sessionId: string }) => {
    const insert = database.prepare('INSERT INTO entry (id, session_id, ordinal, exercise) VALUES (?, ?, ?, ?)');
    for (let index = 0; index < count; index += 1) insert.run(`entry-${index}`, sessionId, index + 2, 'back-squat');
  };

const addClips =
  (count: number) =>
  (database: Database.Database, { entryId }: { entryId: string }) => {
    const insert = database.prepare(
      'INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor) VALUES (?, ?, ?, ?, 1)',
    );
    for (let index = 0; index < count; index += 1) insert.run(`clip-${index}`, entryId, index + 1, `Set ${index + 1}`);
  };

const addFlags = (count: number) => (database: Database.Database, ids: { entryId: string }) => {
  addClips(1)(database, ids);
  const insert = database.prepare(
    `INSERT INTO flag (id, clip_id, ordinal, criterion, severity, whole_set, at_frame, at_ticks, note, cue)
     VALUES (?, 'clip-0', ?, 'depth', 'keep', 1, 0, 0, '', '')`,
  );
  for (let index = 0; index < count; index += 1) insert.run(`flag-${index}`, index + 1);
};

const addReps = (count: number) => (database: Database.Database, ids: { entryId: string }) => {
  addClips(1)(database, ids);
  const insert = database.prepare("INSERT INTO rep (id, clip_id, start_frame, start_ticks) VALUES (?, 'clip-0', ?, ?)");
  for (let index = 0; index < count; index += 1) insert.run(`rep-${index}`, 2 * index, 2 * index);
};

// The review format's own figures: 100 exercises a session, 100 clips and 5,000 flags an exercise.
it('takes the hundredth exercise of a session and refuses the next in one sentence', async () => {
  const { backend, sessionId } = await filled(addEntries(98));
  await ask(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
  const { code, sentence } = await refusal(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
  expect({ code, sentence }).toMatchObject({
    code: 'conflict',
    sentence: expect.stringMatching(/100 exercises at most/),
  });
  expect((await ask(backend, 'review.get', { sessionId })).review.entries).toHaveLength(100);
});

it('moves no clip into an exercise that is full, and opens one that is over it', async () => {
  const { backend, sessionId, entryId } = await filled(addClips(112));
  const { review } = await ask(backend, 'review.get', { sessionId });
  expect(review.entries[0]?.clips).toHaveLength(112);
  const { entryId: other } = await ask(backend, 'entries.add', { sessionId, exercise: 'back-squat' });
  await ask(backend, 'clips.move', { clipId: 'clip-0', to: { kind: 'entry', entryId: other } });
  const refused = await refusal(backend, 'clips.move', { clipId: 'clip-0', to: { kind: 'entry', entryId } });
  expect(refused.sentence).toMatch(/100 clips at most.*nothing was changed/);
  await ask(backend, 'clips.update', { clipId: 'clip-1', change: { name: 'Renamed' } });
  const { history } = await ask(backend, 'review.get', { sessionId });
  expect(history.undo).not.toBeNull();
});

it('opens a session with 130 exercises, and one with 5,200 flags', async () => {
  const many = await filled(addEntries(129));
  expect((await ask(many.backend, 'review.get', { sessionId: many.sessionId })).review.entries).toHaveLength(130);
  const marked = await filled(addFlags(5200));
  const { review } = await ask(marked.backend, 'review.get', { sessionId: marked.sessionId });
  expect(review.entries[0]?.flags).toHaveLength(5200);
});

it('takes the 5,000th flag of an exercise and refuses the next in one sentence', async () => {
  const { backend, sessionId } = await filled(addFlags(4999));
  const flag = { clipId: 'clip-0', criterion: 'depth', severity: 'keep', reps: 'set', frame: 0 } as const;
  await ask(backend, 'flags.add', flag);
  const { code, sentence } = await refusal(backend, 'flags.add', flag);
  expect([code, sentence]).toEqual(['conflict', expect.stringMatching(/5000 flags at most.*nothing was changed/)]);
  expect((await ask(backend, 'review.get', { sessionId })).review.entries[0]?.flags).toHaveLength(5000);
});

it('takes the 500th rep of a clip and refuses the next in one sentence', async () => {
  const { backend, sessionId } = await filled(addReps(499));
  await ask(backend, 'reps.mark', { clipId: 'clip-0', edge: 'start', frame: 998 });
  const { code, sentence } = await refusal(backend, 'reps.mark', { clipId: 'clip-0', edge: 'start', frame: 1000 });
  expect([code, sentence]).toEqual(['conflict', expect.stringMatching(/500 reps at most.*nothing was changed/)]);
  expect((await ask(backend, 'review.get', { sessionId })).review.entries[0]?.clips[0]?.reps).toHaveLength(500);
});
