import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../../workbench.ts';

const version = 12;

/** When the first frame of each clip appears, in ticks of 1/15360 s; null = its frames are not known. */
const firstTicks: Readonly<Record<string, bigint | null>> = {
  zero: 0n,
  'two seconds': 30_720n,
  'half a second before': -7_680n,
  unknown: null,
};

let database: Database.Database;

beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  for (const [id, first] of Object.entries(firstTicks)) {
    database
      .prepare(
        `INSERT INTO footage (id, container, codec, width, height, rotation_deg, shown_width, shown_height, frames, time_base_numerator,
          time_base_denominator, duration_us, constant_rate, mean_fps, real_time_factor, has_audio, proxy_reason, filmstrip_pictures)
        VALUES (?, '', 'h264', 2, 2, 0, 2, 2, 2, 1, 15360, 66667, 1, 30, 1, 0, '', 0)`,
      )
      .run(id);
    if (first === null) continue;
    const ticks = Buffer.alloc(16);
    ticks.writeBigInt64LE(first, 0);
    ticks.writeBigInt64LE(first + 512n, 8);
    database
      .prepare("INSERT INTO footage_frames VALUES (?, 'original', 1, 15360, ?, ?)")
      .run(id, ticks, first + 1_024n);
  }
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

describe('a library brought to the shape that knows when clips begin', () => {
  it('reads it from the frames it holds, and takes 0 where it holds none', () => {
    const rows = database.prepare('SELECT id, start_us FROM footage').all();
    expect(new Map(rows.map((row) => Object.values(row as object) as [string, number]))).toEqual(
      new Map([
        ['zero', 0],
        ['two seconds', 2_000_000],
        ['half a second before', -500_000],
        ['unknown', 0],
      ]),
    );
  });
});
