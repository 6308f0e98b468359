import { isDay } from '../../../../engine/time/day.ts';
import { localDay } from '../../../contract/localDay.ts';
import type { ProbedHeader, ProbedStream } from './streams.ts';

/** When a clip was filmed: the instant, as ISO, and the day on the wall calendar there. */
export type RecordedAt = { readonly at: string; readonly day: string };

/** Cameras whose clock was never set, and files that state nothing, name a day of the last century. */
const earliestMs = Date.UTC(2000, 0, 1);
const dayMs = 24 * 3600 * 1000;

/**
 * When a film says that it was made; null where it doesn't, or where its clock can't have been right.
 * `com.apple.quicktime.creationdate` is the wall clock where it was filmed, with its distance from UTC; `creation_time` is
 * UTC, so that its day is the one here.
 *
 * @param nowMs what was filmed later than tomorrow was not
 */
export function readRecordedAt(header: ProbedHeader, stream: ProbedStream, nowMs: number): RecordedAt | null {
  const tags = [header.format.tags, stream.tags];
  const onTheWall = tags.map((each) => wallClock(each['com.apple.quicktime.creationdate'], nowMs));
  const inUtc = tags.map((each) => instant(each.creation_time, nowMs));
  return [...onTheWall, ...inUtc].find((found) => found !== null) ?? null;
}

/** When a file was last written, for a film that does not say when it was made. */
export function recordedByFile(modifiedMs: number): RecordedAt {
  const at = new Date(modifiedMs);
  return { at: at.toISOString(), day: localDay(at) };
}

/** "2026-11-28T18:03:11+0100" */
function wallClock(written: string | undefined, nowMs: number): RecordedAt | null {
  const match = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d:\d\d)(?:\.\d+)?([+-]\d\d):?(\d\d)$/.exec(written?.trim() ?? '');
  if (match === null) return instant(written, nowMs);
  const [, day = '', time = '', hours = '', minutes = ''] = match;
  if (!isDay(day)) return null;
  return possible(Date.parse(`${day}T${time}${hours}:${minutes}`), day, nowMs);
}

/** "2026-11-28T17:03:11.000000Z" */
function instant(written: string | undefined, nowMs: number): RecordedAt | null {
  // A day that does not exist is read as one of the next month.
  if (written === undefined || !isDay(written.trim().slice(0, 10))) return null;
  const ms = Date.parse(written.trim());
  return Number.isNaN(ms) ? null : possible(ms, localDay(new Date(ms)), nowMs);
}

function possible(ms: number, day: string, nowMs: number): RecordedAt | null {
  if (Number.isNaN(ms) || ms < earliestMs || ms > nowMs + dayMs) return null;
  return { at: new Date(ms).toISOString(), day };
}
