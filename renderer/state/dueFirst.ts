import type { SessionSummary } from '../../electron/contract/desk.ts';

/** Sessions still without a whole grade come first, since they are what is due; within each, the most recent first. */
export function dueFirst(sessions: readonly SessionSummary[]): readonly SessionSummary[] {
  const isDue = (session: SessionSummary): number => (session.mark === '' || session.provisional ? 0 : 1);
  return [...sessions].sort(
    (a, b) => isDue(a) - isDue(b) || b.date.localeCompare(a.date) || a.traineeName.localeCompare(b.traineeName),
  );
}
