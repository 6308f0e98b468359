/** Media microseconds as m:ss.mmm, rounded half up to the millisecond; minutes go on past 59. "1:05.040" */
export function formatClock(us: number): string {
  const milliseconds = Math.floor(Math.abs(us) / 1000 + 0.5);
  const minutes = Math.floor(milliseconds / 60_000);
  const seconds = String(Math.floor(milliseconds / 1000) % 60).padStart(2, '0');
  const sign = us < 0 && milliseconds > 0 ? '-' : '';
  return `${sign}${minutes}:${seconds}.${String(milliseconds % 1000).padStart(3, '0')}`;
}
