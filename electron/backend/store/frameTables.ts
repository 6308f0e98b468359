import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { first, type Reading, run, type Writing } from './connection.ts';
import { assertSound } from './rowDigests.ts';

/** `original` = the file as it came; `proxy` = what plays instead, frame for frame. */
export type PlaysAs = 'original' | 'proxy';

type FrameRow = {
  readonly time_base_numerator: number;
  readonly time_base_denominator: number;
  readonly ticks: Uint8Array;
  readonly end_ticks: number;
};

/** The frame times of footage, or undefined when they are not known. */
export function readFrameTable(reading: Reading, footageId: string, playsAs: PlaysAs): FrameTable | undefined {
  assertSound(reading, 'footage_frames', footageId, 'partDamaged');
  const row = first<FrameRow>(
    reading,
    'SELECT * FROM footage_frames WHERE footage_id = ? AND plays_as = ?',
    footageId,
    playsAs,
  );
  if (!row) return undefined;
  return {
    timeBase: { numerator: row.time_base_numerator, denominator: row.time_base_denominator },
    ticks: unpack(row.ticks),
    endTicks: row.end_ticks,
  };
}

/** When one frame of footage appears, in ticks; undefined when there is no such frame or no table. */
export function readFrameTicks(reading: Reading, footageId: string, frame: number): number | undefined {
  assertSound(reading, 'footage_frames', footageId, 'partDamaged');
  const row = first<{ ticks: Uint8Array }>(
    reading,
    "SELECT substr(ticks, ?, 8) AS ticks FROM footage_frames WHERE footage_id = ? AND plays_as = 'original'",
    frame * 8 + 1,
    footageId,
  );
  return row && unpack(row.ticks)[0];
}

/** Keeps the frame times of footage, in place of older ones. */
export function writeFrameTable(writing: Writing, footageId: string, playsAs: PlaysAs, table: FrameTable): void {
  run(
    writing,
    `INSERT OR REPLACE INTO footage_frames
      (footage_id, plays_as, time_base_numerator, time_base_denominator, ticks, end_ticks) VALUES (?, ?, ?, ?, ?, ?)`,
    footageId,
    playsAs,
    table.timeBase.numerator,
    table.timeBase.denominator,
    pack(table.ticks),
    table.endTicks,
  );
}

function pack(ticks: readonly number[]): Uint8Array {
  const bytes = new Uint8Array(ticks.length * 8);
  const view = new DataView(bytes.buffer);
  ticks.forEach((tick, index) => {
    view.setBigInt64(index * 8, BigInt(tick), true);
  });
  return bytes;
}

function unpack(bytes: Uint8Array): number[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return Array.from({ length: bytes.byteLength / 8 }, (_, index) => Number(view.getBigInt64(index * 8, true)));
}
