const dayMs = 86_400_000;

/** How many days lie between two days on the calendar such as 2026-03-04; negative where the second is earlier. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / dayMs);

/** How a promised day and today lie to each other. */
export type Lateness =
  | { readonly kind: 'inTime'; readonly daysLeft: number }
  | { readonly kind: 'today' }
  | { readonly kind: 'late'; readonly days: number };

/**
 * Whether footage that came on a day and was promised back within some days is late today.
 *
 * @param came the day that the footage came, such as 2026-03-04
 * @param today the day it is, written the same way
 */
export function latenessOf(came: string, today: string, daysPromised: number): Lateness {
  const daysLeft = daysPromised - daysBetween(came, today);
  if (daysLeft > 0) return { kind: 'inTime', daysLeft };
  return daysLeft === 0 ? { kind: 'today' } : { kind: 'late', days: -daysLeft };
}
