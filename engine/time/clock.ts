/** Seconds written in digits as microseconds, rounded half up at the seventh decimal; exact below that. */
export function digitsToUs(wholeSeconds: string | number, fraction = ''): number {
  const padded = fraction.padEnd(7, '0');
  const halfUp = Number(padded[6]) >= 5 ? 1 : 0;
  return Number(wholeSeconds) * 1_000_000 + Number(padded.slice(0, 6)) + halfUp;
}

/** Media microseconds as m:ss.mmm, rounded half up to the millisecond; minutes go on past 59. "1:05.040" */
export function formatClock(us: number): string {
  const milliseconds = Math.floor(Math.abs(us) / 1000 + 0.5);
  const minutes = Math.floor(milliseconds / 60_000);
  const seconds = String(Math.floor(milliseconds / 1000) % 60).padStart(2, '0');
  const sign = us < 0 && milliseconds > 0 ? '-' : '';
  return `${sign}${minutes}:${seconds}.${String(milliseconds % 1000).padStart(3, '0')}`;
}

const clock = /^(-)?(?:(\d{1,3}):([0-5]\d)|(\d{1,5})):([0-5]\d)(?:\.(\d{1,9}))?$/;

/** Reads m:ss, m:ss.mmm or h:mm:ss.mmm as media microseconds; null when it is not written so. */
export function parseClock(text: string): number | null {
  const match = clock.exec(text);
  if (match === null) return null;
  const [, sign, hours = '0', minutesOfHour, minutes, seconds = '0', fraction = ''] = match;
  const wholeSeconds = Number(hours) * 3600 + Number(minutesOfHour ?? minutes) * 60 + Number(seconds);
  const us = digitsToUs(wholeSeconds, fraction);
  return sign === '-' && us > 0 ? -us : us;
}
