import { digitsToUs } from './clock.ts';

/** A stretch of a clip, start included, end not; `endUs` null = to the end. Media microseconds. */
export type TimeFragment = { readonly startUs: number; readonly endUs: number | null };

const normalPlayTime = /^(?:(?:(\d+):)?([0-5]\d):([0-5]\d)|(\d+))(?:\.(\d*))?$/;

/** A time of the W3C's normal play time: 10, 10.5, 01:10.5, 1:01:10.5. */
function parseTime(text: string): number | null {
  const match = normalPlayTime.exec(text);
  if (match === null) return null;
  const [, hours = '0', minutes = '0', secondsOfMinute, seconds, fraction = ''] = match;
  const whole = Number(hours) * 3600 + Number(minutes) * 60 + Number(secondsOfMinute ?? seconds);
  const us = digitsToUs(whole, fraction);
  return Number.isSafeInteger(us) ? us : null;
}

function parseValue(value: string): TimeFragment | null {
  const [from = '', to, ...more] = (value.startsWith('npt:') ? value.slice(4) : value).split(',');
  if (more.length > 0 || (from === '' && to === undefined)) return null;
  const startUs = from === '' ? 0 : parseTime(from);
  if (startUs === null) return null;
  if (to === undefined) return { startUs, endUs: null };
  const endUs = parseTime(to);
  return endUs === null || endUs <= startUs ? null : { startUs, endUs };
}

const decode = (text: string): string | null => {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
};

/**
 * The stretch that a media fragment names (W3C Media Fragments URI 1.0, temporal dimension, normal play time): takes
 * an address, "#t=10,20" or "t=10,20". The last valid `t` counts; null where there is none.
 */
export function parseTimeFragment(text: string): TimeFragment | null {
  const pairs = text.slice(text.indexOf('#') + 1).split('&');
  for (const pair of pairs.reverse()) {
    const equals = pair.indexOf('=');
    if (equals === -1 || decode(pair.slice(0, equals)) !== 't') continue;
    const value = decode(pair.slice(equals + 1));
    const fragment = value === null ? null : parseValue(value);
    if (fragment !== null) return fragment;
  }
  return null;
}

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
