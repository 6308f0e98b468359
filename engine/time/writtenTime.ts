/** Media microseconds as m:ss.mmm, rounded half up to the millisecond; minutes go on past 59. "1:05.040" */
export function formatClock(us: number): string {
  const milliseconds = Math.floor(Math.abs(us) / 1000 + 0.5);
  const minutes = Math.floor(milliseconds / 60_000);
  const seconds = String(Math.floor(milliseconds / 1000) % 60).padStart(2, '0');
  const sign = us < 0 && milliseconds > 0 ? '-' : '';
  return `${sign}${minutes}:${seconds}.${String(milliseconds % 1000).padStart(3, '0')}`;
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
