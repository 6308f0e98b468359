import { beforeAll, expect, it } from 'vitest';
import type { MeasuredTrueClip } from '../../../bench/truth/measureTrueClip.ts';
import { type Totals, totalsOf } from '../../../bench/truth/totals.ts';
import { measureTrueFilm, trueClip } from './trueFilm.ts';

// Source of every expectation: the truth files written when the clips were made (tests/footage).

// One of each kind; `npm run bench -- truth` measures all.
const withBar = ['squat-hand-held', 'squat-three-quarter', 'squat-walk-out'] as const;
const names = [...withBar, 'squat-no-bar'] as const;
const measured = new Map<string, MeasuredTrueClip>();

beforeAll(async () => {
  for (const name of names) measured.set(name, await measureTrueFilm(trueClip(name)));
}, 900_000);

it.each(names)('%s has its reps, and not one more', (name) => {
  const compared = measured.get(name)?.compared;
  expect(compared?.pairs).toHaveLength(trueClip(name).reps.length);
  expect(compared?.invented).toEqual([]);
});

const withBarTotals = (): Totals =>
  totalsOf(
    withBar.flatMap((name) => {
      const clip = measured.get(name);
      return clip ? [clip.compared] : [];
    }),
  );

it('times phases and pauses of a bar: median within 0.03 s, 95 of 100 within 0.12 s', () => {
  const { phases } = withBarTotals();
  // Four phases of nine reps, without the last pause of each clip.
  expect(phases.count).toBe(4 * 9 - withBar.length);
  expect(phases.median).toBeLessThanOrEqual(0.03);
  expect(phases.p95).toBeLessThanOrEqual(0.12);
});

it('tells the range of a bar: median within 2.5 %', () => {
  const { range } = withBarTotals();
  expect(range.count).toBe(9);
  expect(range.median).toBeLessThanOrEqual(2.5);
});
