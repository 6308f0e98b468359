import path from 'node:path';
import Database from 'better-sqlite3';
import { judgingDataOf } from '../../electron/backend/catalogue/loadCatalogue.ts';
import { closeReading, closeWriting, openReading, openWriting } from '../../electron/backend/store/connection.ts';
import { createLibrary } from '../../electron/backend/store/library.ts';
import { makeDigestsAnew } from '../../electron/backend/store/rowDigests.ts';
import { freshSummary } from '../../electron/backend/summaries/freshSummary.ts';
import { rootFolder } from '../../electron/launch/folders.ts';

const clipsEach = 3;
const repsEach = 5;
const flagsEach = 4;
const actsEach = 12;
const frames = 60;

/** Frame times of a clip, packed as the library packs them. */
function packedTicks(): Buffer {
  const ticks = Buffer.alloc(frames * 8);
  for (let frame = 0; frame < frames; frame += 1) ticks.writeBigInt64LE(BigInt(frame * 100), frame * 8);
  return ticks;
}

/**
 * Writes a library of sessions that are alike but for their days: three clips each, without files, five reps and four
 * flags a clip. Ten sessions belong to trainee `t0`, the others are spread over as many trainees as a coach has. Session
 * and clip ids are `s0`, `s0c0`, `s0c1`, ….
 */
export function writeLargeLibrary(folder: string, sessions: number): void {
  createLibrary(folder, rootFolder, { voice: 'coach', coach: '' }).close();
  const database = new Database(path.join(folder, 'rackside.sqlite'));
  const each = (sql: string, count: number, ...values: unknown[]): void => {
    database
      .prepare(`WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i + 1 < ${count}) ${sql}`)
      .run(...values);
  };
  const trainees = Math.min(150, Math.ceil(sessions / 10));
  const clips = sessions * clipsEach;
  const version = judgingDataOf(rootFolder).rubricVersions().at(-1) ?? 1;
  const traineeOf = `'t' || CASE WHEN i < 10 THEN 0 ELSE 1 + i % (${trainees} - 1) END`;
  const dateOf = "date('2020-01-01', '+' || (i % 2000) || ' days')";
  database.transaction(() => {
    each(
      `INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
        SELECT 't' || i, 'Trainee ' || i, 'growth', 'experienced', 'kg', 0, 'then' FROM n`,
      trainees,
    );
    each(
      `INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at, rubric_version)
        SELECT 's' || i, ${traineeOf}, 'Legs', ${dateOf}, '', '', printf('2026-%08d', i), ${version} FROM n`,
      sessions,
    );
    each(
      "INSERT INTO entry (id, session_id, ordinal, exercise) SELECT 's' || i || 'e', 's' || i, 1, 'back-squat' FROM n",
      sessions,
    );
    each(
      `INSERT INTO footage (id, container, codec, width, height, rotation_deg, shown_width, shown_height, frames,
          time_base_numerator, time_base_denominator, duration_us, constant_rate, mean_fps, real_time_factor, has_audio,
          proxy_reason, filmstrip_pictures)
        SELECT 'f' || i, 'mp4', 'h264', 640, 360, 0, 640, 360, ${frames}, 1, 3000, 2000000, 1, 30, 1, 0, '', 0 FROM n`,
      clips,
    );
    each(
      `INSERT INTO footage_frames (footage_id, plays_as, time_base_numerator, time_base_denominator, ticks, end_ticks)
        SELECT 'f' || i, 'original', 1, 3000, ?, ${frames * 100} FROM n`,
      clips,
      packedTicks(),
    );
    const clipId = `'s' || (i / ${clipsEach}) || 'c' || (i % ${clipsEach})`;
    each(
      `INSERT INTO clip (id, entry_id, footage_id, ordinal, name, view, real_time_factor)
        SELECT ${clipId}, 's' || (i / ${clipsEach}) || 'e', 'f' || i, i % ${clipsEach}, 'Set', 'side', 1 FROM n`,
      clips,
    );
    const clipOf = (of: number): string => `'s' || (i / ${clipsEach * of}) || 'c' || (i / ${of} % ${clipsEach})`;
    each(
      `INSERT INTO rep (id, clip_id, start_frame, start_ticks)
        SELECT 'r' || i, ${clipOf(repsEach)}, (i % ${repsEach}) * 10, (i % ${repsEach}) * 1000 FROM n`,
      clips * repsEach,
    );
    each(
      `INSERT INTO flag (id, clip_id, ordinal, criterion, severity, whole_set, at_frame, at_ticks, note, cue)
        SELECT 'l' || i, ${clipOf(flagsEach)}, i % ${flagsEach},
          json_extract('["depth","eccentricTempo","barPath","spinePosition"]', '$[' || (i % 4) || ']'), 'adjust', 1, 3, 300, '', ''
        FROM n`,
      clips * flagsEach,
    );
    each(
      `INSERT INTO act (session_id, name, at, who, undoable, state)
        SELECT 's' || (i / ${actsEach}), 'Flag: Depth, whole set', 'then', 'coach', 1, 'done' FROM n`,
      sessions * actsEach,
    );
    each(
      `INSERT INTO session_summary (session_id, trainee_id, date, created_at, second_look, read_only, exercises, clips,
        flags, mark, score, provisional, by_hand, coverage, unfinished, last_act, rubric_version, judging_sha256, content_sha256)
      SELECT 's' || i, ${traineeOf}, ${dateOf}, printf('2026-%08d', i), 0, 0, '[]', 0, 0, '', NULL,
          0, 0, 0, 1, (i + 1) * ${actsEach}, ${version}, '', NULL FROM n`,
      sessions,
    );
  })();
  database.close();
  writeDigests(folder);
  makeSummaries(folder);
  writeDigests(folder);
}

/** The digests that the rows would have if the app had written them. */
function writeDigests(folder: string): void {
  const writing = openWriting(path.join(folder, 'rackside.sqlite'));
  makeDigestsAnew(writing, []);
  closeWriting(writing);
}

/** The sessions are alike, so one summary is right for all of them. */
function makeSummaries(folder: string): void {
  const file = path.join(folder, 'rackside.sqlite');
  const reading = openReading(file);
  const fresh = freshSummary(reading, 's0', judgingDataOf(rootFolder));
  closeReading(reading);
  const database = new Database(file);
  database
    .prepare(
      `UPDATE session_summary SET exercises = ?, clips = ?, flags = ?, mark = ?, score = ?, provisional = ?, coverage = ?,
        unfinished = ?, judging_sha256 = ?`,
    )
    .run(
      JSON.stringify(fresh.exercises),
      fresh.clips,
      fresh.flags,
      fresh.mark,
      fresh.score,
      fresh.provisional ? 1 : 0,
      fresh.coverage,
      fresh.mark === '' || fresh.provisional ? 1 : 0,
      fresh.judgingSha256,
    );
  database.exec('ANALYZE');
  database.close();
}
