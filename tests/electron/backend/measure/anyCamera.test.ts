import { beforeAll, describe, expect, it } from 'vitest';
import type { MeasuredTrueClip } from '../../../bench/truth/measureTrueClip.ts';
import { totalsOf } from '../../../bench/truth/totals.ts';
import { measureTrueFilm, trueClip } from './trueFilm.ts';

// Source of every expectation: the truth files written when the clips were made (tests/footage).

const withBar = [
  'squat-hand-held',
  'hinge-hand-held',
  'squat-three-quarter',
  'press-three-quarter-rear',
  'squat-walk-out',
] as const;
const names = [...withBar, 'squat-no-bar'] as const;
const measured = new Map<string, MeasuredTrueClip>();
const clipOf = (name: string): MeasuredTrueClip => {
  const clip = measured.get(name);
  if (!clip) throw new Error(`${name} was not measured`);
  return clip;
};

beforeAll(async () => {
  for (const name of names) measured.set(name, await measureTrueFilm(trueClip(name)));
}, 480_000);

it.each(names)('%s has its reps, and not one more', (name) => {
  const { compared } = clipOf(name);
  expect(compared.missed).toEqual([]);
  expect(compared.invented).toEqual([]);
});

describe('with a bar', () => {
  const totals = () => totalsOf(withBar.map((name) => clipOf(name).compared));
  it('phases and pauses: median within 0.03 s, 95 of 100 within 0.12 s', () => {
    expect(totals().phases.median).toBeLessThanOrEqual(0.03);
    expect(totals().phases.p95).toBeLessThanOrEqual(0.12);
  });

  it('tells the range to 2.5 %', () => {
    expect(totals().range.median).toBeLessThanOrEqual(2.5);
  });

  it('covers the truth with its uncertainty in at least 90 of 100 measures', () => {
    expect(totals().cover).toBeGreaterThanOrEqual(0.9);
  });
});
