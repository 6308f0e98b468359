import type { LineMove } from '../../contract/jobs.ts';
import type { Waiting } from '../store/jobs.ts';

/**
 * The ranks of those that a person has ordered, once one of them is moved: the moved one and all before it keep their places
 * from then on, whatever else comes into the line.
 */
export function ranksAfterMove(line: readonly Waiting[], jobId: string, to: LineMove): readonly Waiting[] {
  const at = line.findIndex(({ id }) => id === jobId);
  const job = line[at];
  if (job === undefined) return [];
  const target = to === 'first' ? 0 : Math.min(line.length - 1, Math.max(0, at + (to === 'up' ? -1 : 1)));
  const others = line.filter(({ id }) => id !== jobId);
  const moved = [...others.slice(0, target), job, ...others.slice(target)];
  const lastOrdered = moved.findLastIndex(({ rank }) => rank < 0);
  const kept = Math.max(target, lastOrdered) + 1;
  return moved.slice(0, kept).map(({ id }, place) => ({ id, rank: place - kept }));
}

const latestDay = 10_000_000;
const dayMs = 86_400_000;

/** The rank of a job that the app adds by itself for a session's day: the newest day first. */
export const rankByDay = (date: string): number => latestDay - Math.floor(Date.parse(`${date}T00:00:00Z`) / dayMs);
