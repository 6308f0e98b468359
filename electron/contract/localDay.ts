/** How many days after a handover a trainee films again, unless another day is named. */
export const usualDaysToFilming = 7;

/** The day on the wall calendar where the person is, as 2026-10-18; `daysLater` days after `now`. */
export function localDay(now: Date, daysLater = 0): string {
  const day = new Date(now.getFullYear(), now.getMonth(), now.getDate() + daysLater);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}
