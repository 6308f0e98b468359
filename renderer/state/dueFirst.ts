import type { SessionSummary } from '../../electron/contract/desk.ts';

const isDue = (session: SessionSummary): number => (session.mark === '' || session.provisional ? 0 : 1);

/** Sessions still without a whole grade come first, since they are what is due; within each, the most recent first. */
export function dueFirst(sessions: readonly SessionSummary[]): readonly SessionSummary[] {
  return [...sessions].sort(
    (a, b) => isDue(a) - isDue(b) || b.date.localeCompare(a.date) || a.traineeName.localeCompare(b.traineeName),
  );
}

/** Whether a session comes before another one, or stands beside it on the same day. */
export const isDueBefore = (a: SessionSummary, b: SessionSummary): boolean =>
  isDue(a) < isDue(b) || (isDue(a) === isDue(b) && a.date >= b.date);
