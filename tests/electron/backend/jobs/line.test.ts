import fc from 'fast-check';
import { expect, it } from 'vitest';
import { rankByDay, ranksAfterMove } from '../../../../electron/backend/jobs/line.ts';
import { lineMoves } from '../../../../electron/contract/jobs.ts';

type Job = { readonly id: string; readonly rank: number };

const inOrder = (jobs: readonly Job[]): Job[] => [...jobs].sort((a, b) => a.rank - b.rank);

/** The line once the ranks of a move are written. */
function after(line: readonly Job[], id: string, to: (typeof lineMoves)[number]): Job[] {
  const ranks = new Map(ranksAfterMove(line, id, to).map((one) => [one.id, one.rank]));
  return inOrder(line.map((job) => ({ ...job, rank: ranks.get(job.id) ?? job.rank })));
}

const ids = (line: readonly Job[]): string => line.map(({ id }) => id).join('');
const line = [...'abcde'].map((id, at) => ({ id, rank: at + 1 }));

it('moves a job up, down, and to the front', () => {
  expect(ids(after(line, 'd', 'up'))).toBe('abdce');
  expect(ids(after(line, 'b', 'down'))).toBe('acbde');
  expect(ids(after(line, 'e', 'first'))).toBe('eabcd');
  expect(ids(after(line, 'a', 'up'))).toBe('abcde');
  expect(ids(after(line, 'e', 'down'))).toBe('abcde');
  expect(ranksAfterMove(line, 'z', 'up')).toEqual([]);
});

it('keeps what was ordered in its place, whatever comes in later', () => {
  const moved = after(line, 'c', 'first');
  expect(ids(moved)).toBe('cabde');
  // A newer session: before all that nobody has ordered.
  expect(ids(inOrder([...moved, { id: 'n', rank: 0.5 }]))).toBe('cnabde');
});

it('moves one place at most, and keeps the order of all others, move after move', () => {
  const moves = fc.array(fc.record({ at: fc.nat({ max: 4 }), to: fc.constantFrom(...lineMoves) }), { maxLength: 12 });
  fc.assert(
    fc.property(moves, (list) => {
      let now: Job[] = line;
      for (const { at, to } of list) {
        const { id = '' } = now[at] ?? {};
        const then = after(now, id, to);
        expect(ids(then).replace(id, '')).toBe(ids(now).replace(id, ''));
        const target = to === 'first' ? 0 : Math.min(4, Math.max(0, at + (to === 'up' ? -1 : 1)));
        expect(then.findIndex((job) => job.id === id)).toBe(target);
        now = then;
      }
    }),
  );
});

it('ranks the newest day first, and every day after what a person asks for', () => {
  const days = ['2026-11-29', '2026-11-28', '2025-12-31', '1999-01-01'];
  const ranks = days.map(rankByDay);
  expect(inOrder(ranks.map((rank, at) => ({ id: days[at] ?? '', rank }))).map(({ id }) => id)).toEqual(days);
  expect(Math.min(...ranks)).toBeGreaterThan(0);
});
