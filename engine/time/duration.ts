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
