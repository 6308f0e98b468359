const time = 'T(?:\\d+H(?:\\d+M(?:\\d+S)?)?|\\d+M(?:\\d+S)?|\\d+S)';
const date = '(?:\\d+D|\\d+M(?:\\d+D)?|\\d+Y(?:\\d+M(?:\\d+D)?)?)';
const duration = new RegExp(`^P(?:${date}(?:${time})?|${time}|\\d+W)$`);
const fixed = /^P(?:(\d+)W|(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?)?)$/;

/** Whether a text is an ISO 8601 duration by the grammar of RFC 3339, appendix A, in capital letters. */
export function isDuration(text: string): boolean {
  return text.length <= 100 && duration.test(text);
}

/** Seconds of a duration; null for what is none, or has years or months, whose length is not fixed. */
export function parseDurationS(text: string): number | null {
  if (!isDuration(text)) return null;
  const match = fixed.exec(text);
  if (match === null) return null;
  const [weeks = 0, days = 0, hours = 0, minutes = 0, seconds = 0] = match.slice(1).map((part) => Number(part ?? 0));
  const total = weeks * 604_800 + days * 86_400 + hours * 3600 + minutes * 60 + seconds;
  return Number.isSafeInteger(total) ? total : null;
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
