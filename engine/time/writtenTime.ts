import { type FrameTable, hasConstantRate, meanFrameRate } from './frameTable.ts';

/** Media microseconds as m:ss.mmm, rounded half up to the millisecond; minutes go on past 59. "1:05.040" */
export function formatClock(us: number): string {
  const milliseconds = Math.floor(Math.abs(us) / 1000 + 0.5);
  const minutes = Math.floor(milliseconds / 60_000);
  const seconds = String(Math.floor(milliseconds / 1000) % 60).padStart(2, '0');
  const sign = us < 0 && milliseconds > 0 ? '-' : '';
  return `${sign}${minutes}:${seconds}.${String(milliseconds % 1000).padStart(3, '0')}`;
}

/** Media microseconds as m:ss, the second they fall in: a player that shows "1:05" is there. "1:05" for 65.9 s */
export function formatSecondsClock(us: number): string {
  const seconds = Math.max(0, Math.floor(us / 1_000_000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/**
 * Whole seconds as a duration: "PT1H5M2S", "PT45S", "PT0S". The grammar of RFC 3339 knows no hours with seconds
 * but without minutes, so 3630 s is "PT1H0M30S". Throws a RangeError for negative or broken seconds.
 */
export function formatDurationS(seconds: number): string {
  if (!Number.isSafeInteger(seconds) || seconds < 0) throw new RangeError('A duration is a whole number of seconds.');
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  const rest = seconds % 60;
  const hoursPart = hours > 0 ? `${hours}H` : '';
  const minutesPart = minutes > 0 || (hours > 0 && rest > 0) ? `${minutes}M` : '';
  const secondsPart = rest > 0 || seconds === 0 ? `${rest}S` : '';
  return `PT${hoursPart}${minutesPart}${secondsPart}`;
}

/** A stretch of a clip, start included, end not; `endUs` null = to the end. Media microseconds. */
export type TimeFragment = { readonly startUs: number; readonly endUs: number | null };

const printSeconds = (us: number): string => {
  const fraction = String(us % 1_000_000)
    .padStart(6, '0')
    .replace(/0+$/, '');
  return `${Math.floor(us / 1_000_000)}${fraction === '' ? '' : `.${fraction}`}`;
};

/** A stretch as "t=12.4,14.1", or "t=12.4" to the end. `startUs` is 0 or more, `endUs` after it. */
export function printTimeFragment({ startUs, endUs }: TimeFragment): string {
  return `t=${printSeconds(startUs)}${endUs === null ? '' : `,${printSeconds(endUs)}`}`;
}

/** A stretch laid on a clip: an end past the clip is the clip's end, and so is a start past it. */
export function fragmentWithin(fragment: TimeFragment, durationUs: number): { startUs: number; endUs: number } {
  const startUs = Math.min(fragment.startUs, durationUs);
  return { startUs, endUs: Math.min(fragment.endUs ?? durationUs, durationUs) };
}

/**
 * How a time code counts (SMPTE ST 12-1): frames per counted second, and whether frame numbers are dropped so that
 * 29.97 and 59.94 keep up with the clock. Drop counting exists for 30 and 60 alone.
 */
export type TimecodeRate =
  | { readonly counted: 24 | 25 | 30 | 48 | 50 | 60; readonly numbers: 'all' }
  | { readonly counted: 30 | 60; readonly numbers: 'drop' };

/** Numbers left out at the start of each minute that is not a multiple of ten: 2 at 29.97, 4 at 59.94. */
const droppedPerMinute = ({ counted, numbers }: TimecodeRate): number => (numbers === 'drop' ? counted / 15 : 0);

/** Frames that a day of labels counts: 2,589,408 for 29.97 drop-frame. */
export function framesPerDay(rate: TimecodeRate): number {
  return 86_400 * rate.counted - droppedPerMinute(rate) * 9 * 6 * 24;
}

const two = (value: number): string => String(value).padStart(2, '0');

/** The label of a frame counted from 0; after a day it begins again. ";" before the frames marks drop counting. */
export function formatTimecode(frame: number, rate: TimecodeRate): string {
  const { counted } = rate;
  const drop = droppedPerMinute(rate);
  const perDay = framesPerDay(rate);
  const ofDay = ((Math.trunc(frame) % perDay) + perDay) % perDay;
  const perTenMinutes = 600 * counted - 9 * drop;
  const perMinute = 60 * counted - drop;
  const inTen = ofDay % perTenMinutes;
  const minutesDropped = drop === 0 || inTen < drop ? 0 : Math.floor((inTen - drop) / perMinute);
  const number = ofDay + drop * (9 * Math.floor(ofDay / perTenMinutes) + minutesDropped);
  const seconds = Math.floor(number / counted);
  const mark = drop === 0 ? ':' : ';';
  const clock = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60].map(two).join(':');
  return `${clock}${mark}${two(number % counted)}`;
}

const label = /^([01]\d|2[0-3]):([0-5]\d):([0-5]\d)([:;.])(\d{2})$/;

/**
 * The frame of a label. Null for what is no label at this rate: too many frames, the wrong mark (":" counts all
 * numbers, ";" or "." drops), or a number that drop counting leaves out, such as 00:01:00;00.
 */
export function parseTimecode(text: string, rate: TimecodeRate): number | null {
  const match = label.exec(text);
  if (match === null) return null;
  const { counted } = rate;
  const drop = droppedPerMinute(rate);
  const [hours = 0, minutesOfHour = 0, seconds = 0, frames = 0] = [match[1], match[2], match[3], match[5]].map(Number);
  if ((match[4] === ':') !== (drop === 0) || frames >= counted) return null;
  const minutes = 60 * hours + minutesOfHour;
  if (seconds === 0 && frames < drop && minutes % 10 !== 0) return null;
  return (60 * minutes + seconds) * counted + frames - drop * (minutes - Math.floor(minutes / 10));
}

/** The rate of time codes for a constant frame rate, drop counting for 29.97 and 59.94; null for other rates. */
export function timecodeRateFor(fps: number): TimecodeRate | null {
  const near = (rate: number) => Math.abs(fps - rate) < 0.005;
  if (near(30_000 / 1001)) return { counted: 30, numbers: 'drop' };
  if (near(60_000 / 1001)) return { counted: 60, numbers: 'drop' };
  const counted = ([24, 25, 30, 48, 50, 60] as const).find(near);
  return counted === undefined ? null : { counted, numbers: 'all' };
}

/** The rate to label the frames of a clip with; null for a variable rate, and for one that has no time code. */
export const timecodeRateOf = (table: FrameTable): TimecodeRate | null =>
  hasConstantRate(table) ? timecodeRateFor(meanFrameRate(table)) : null;
