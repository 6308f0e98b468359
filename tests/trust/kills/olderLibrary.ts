import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { openBackend } from '../../../electron/backend/backend.ts';
import { closeWriting, openWriting, runScript, setNumberPragma } from '../../../electron/backend/store/connection.ts';
import { applicationId } from '../../../electron/backend/store/inspect.ts';
import { migrate, readMigrations } from '../../../electron/backend/store/migrations.ts';
import { rootFolder } from '../../../electron/launch/folders.ts';
import { ask } from '../harness/ask.ts';

/** Rows enough that bringing them to a new shape takes a while. */
const sessions = 60;
const flagsEach = 12;
export const olderFlags = sessions * flagsEach;

/** Makes the library of a version of two shapes only; it holds flags in sessions. */
export function makeOlderLibrary(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const writing = openWriting(path.join(folder, 'rackside.sqlite'));
  setNumberPragma(writing, 'application_id', applicationId);
  migrate(writing, readMigrations(rootFolder).slice(0, 2), () => undefined);
  const range = Array.from({ length: sessions }, (_, index) => index);
  const rows = range.map(
    (s) => `
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s${s}', 't', 'Session ${s}', '2026-03-04', 'Notes of ${s}', '', '2026-03-04T10:00:00.000Z');
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e${s}', 's${s}', 1, 'back-squat');
    INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor) VALUES ('c${s}', 'e${s}', 1, 'Set 1', 1);
    ${Array.from({ length: flagsEach }, (_, f) => flagRow(s, f)).join('\n')}`,
  );
  runScript(
    writing,
    `BEGIN;
    INSERT INTO library (only_row, id, created_at, voice, coach) VALUES (1, 'l', '2026-03-04T10:00:00.000Z', 'coach', 'Ada Quill');
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira Holt', 'growth', 'new', 'kg', 0, '2026-03-04T10:00:00.000Z');
    ${rows.join('\n')}
    COMMIT;`,
  );
  closeWriting(writing);
}

const flagRow = (s: number, f: number): string =>
  `INSERT INTO flag (id, clip_id, ordinal, criterion, weight, whole_set, at_seconds, note, cue)
    VALUES ('f${s}-${f}', 'c${s}', ${f}, 'depth', 'adjust', 1, ${f}, 'Note ${s}-${f}', '');`;

/** Whether everything that was in the older library is in the one that it became; a sentence a fault. */
export async function checkBroughtUp(folder: string): Promise<string[]> {
  const backend = openBackend({ libraryFolder: folder, appFolder: rootFolder });
  try {
    const faults: string[] = [];
    for (let s = 0; s < sessions; s += 7) {
      const { review } = await ask(backend, 'review.get', { sessionId: `s${s}` });
      const notes = review.entries.flatMap((entry) => entry.flags.map(({ note }) => note)).sort();
      const expected = Array.from({ length: flagsEach }, (_, f) => `Note ${s}-${f}`).sort();
      if (JSON.stringify(notes) !== JSON.stringify(expected)) faults.push(`session ${s}: ${notes.length} flags`);
      if (review.session.notes !== `Notes of ${s}`) faults.push(`session ${s}: its notes`);
    }
    const { sound, findings } = await ask(backend, 'library.verify', {});
    return sound ? faults : [...faults, ...findings];
  } finally {
    await backend.close();
  }
}
