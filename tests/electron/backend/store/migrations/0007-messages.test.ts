import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import {
  abandon,
  all,
  openWriting,
  run,
  runScript,
  type Writing,
} from '../../../../../electron/backend/store/connection.ts';
import { migrate, readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder, temporaryFolder } from '../../workbench.ts';

const steps = readMigrations(appFolder);
const version = steps.findIndex(({ name }) => name === 'messages') + 1;

let writing: Writing;

/** What a recording was stored as before: warnings as sentences, packed with what was found. */
const packed = (warnings: readonly string[]) => gzipSync(JSON.stringify({ found: null, warnings }));
const record = (clicks: string, what: string, warnings: readonly string[]) =>
  run(
    writing,
    "INSERT INTO recording (footage_id, what, clicks, method, recorded_at, data) VALUES ('f', ?, ?, 'old/1', 'then', ?)",
    what,
    clicks.repeat(64),
    packed(warnings),
  );

/** A library one shape below, with recordings, a flag by hand and a suggestion that became a flag, brought up as the app does it. */
beforeEach(() => {
  writing = openWriting(path.join(temporaryFolder(), 'library.sqlite'));
  onTestFinished(() => abandon(writing));
  migrate(writing, steps.slice(0, version - 1), () => undefined);
  runScript(
    writing,
    `INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
       VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 1, 'then');
     INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
       VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
     INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('e', 's', 1, 'back-squat');
     INSERT INTO clip (id, entry_id, ordinal, name, real_time_factor) VALUES ('c', 'e', 1, 'Set 1', 1);
     INSERT INTO flag (id, clip_id, ordinal, criterion, weight, whole_set, at_seconds, note, cue)
       VALUES ('own', 'c', 1, 'depth', 'adjust', 1, 1.5, 'A little deeper.', ''),
              ('said', 'c', 2, 'eccentricTempo', 'adjust', 1, 2.5, 'Rep 2 lowers in 1.2 s ± 0.1 s.', '');
     INSERT INTO suggestion_answer (clip_id, suggestion_id, answer, flag_id)
       VALUES ('c', 'eccentricTempo.tooQuick', 'accepted', 'said');
     INSERT INTO footage (id, container, codec, width, height, rotation_deg, shown_width, shown_height, frames,
       time_base_numerator, time_base_denominator, duration_us, constant_rate, mean_fps, real_time_factor, has_audio,
       proxy_reason, filmstrip_pictures)
       VALUES ('f', 'mov', 'h264', 640, 480, 0, 640, 480, 300, 1, 30, 10000000, 1, 30, 1, 0, '', 0);`,
  );
  record('a', 'disc', [
    'The camera moves and the background shows too little to take that out, so heights, drift and speeds are not told.',
    'The disc can’t be seen in 42 of 300 frames; click it where it is lost, if it shows there.',
    'No rim of a disc shows round the click at frame 17, so that click was left out.',
  ]);
  record('a', 'point', ['The point can’t be told apart in 30 of 300 frames; click it again where it is lost.']);
  record('a', 'joints', [
    'The lifter could be seen in 54 % of the clip only, so joints are missing elsewhere; film from the side with the whole body in the picture.',
  ]);
  record('b', 'disc', []);
  migrate(writing, steps.slice(0, version), () => undefined);
});

const warningsOf = () =>
  all<{ name: string; warnings: string }>(
    writing,
    'SELECT what || substr(clicks, 1, 1) AS name, warnings FROM recording ORDER BY name',
  ).map(({ name, warnings }) => [name, JSON.parse(warnings)]);

describe('a library whose recordings hold their warnings as sentences', () => {
  it('has them as messages with their numbers', () => {
    expect(warningsOf()).toEqual([
      [
        'disca',
        [
          { id: 'cameraMoves', values: {} },
          { id: 'discLost', values: { lost: 42, frames: 300 } },
          { id: 'noRimAtClick', values: { frame: 17 } },
        ],
      ],
      ['discb', []],
      ['jointsa', [{ id: 'seldomSeen', values: { percent: 54 } }]],
      ['pointa', [{ id: 'pointLost', values: { lost: 30, frames: 300 } }]],
    ]);
  });

  it('keeps every note as it was written', () => {
    expect(all(writing, 'SELECT id, note, note_message FROM flag ORDER BY ordinal')).toEqual([
      { id: 'own', note: 'A little deeper.', note_message: null },
      { id: 'said', note: 'Rep 2 lowers in 1.2 s ± 0.1 s.', note_message: null },
    ]);
  });

  it.each([
    ["UPDATE recording SET warnings = 'No disc was found.'", 'a sentence for a list of messages'],
    ["UPDATE recording SET warnings = '{}'", 'one message for a list'],
    ['UPDATE recording SET warnings = NULL', 'no list at all'],
    ["UPDATE flag SET note_message = '[]'", 'a list for a message'],
    ["UPDATE flag SET note_message = 'lowers'", 'words for a message'],
  ])('refuses %s', (sql) => {
    expect(() => runScript(writing, sql)).toThrow(/constraint/i);
  });
});
