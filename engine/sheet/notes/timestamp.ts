/** A time in milliseconds as 00:01:02.345, with the mark that stands before the thousandths; hours go on past 99. */
export function timestamp(ms: number, mark: '.' | ','): string {
  const two = (value: number) => String(Math.trunc(value)).padStart(2, '0');
  const clock = [ms / 3_600_000, (ms / 60_000) % 60, (ms / 1000) % 60].map(two).join(':');
  return `${clock}${mark}${String(ms % 1000).padStart(3, '0')}`;
}
