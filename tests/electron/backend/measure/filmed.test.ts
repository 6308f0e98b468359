import { beforeAll, describe, expect, it } from 'vitest';
import type { MeasuredTrueClip } from '../../../bench/truth/measureTrueClip.ts';
import { totalsOf } from '../../../bench/truth/totals.ts';
import { measureTrueFilm, trueClip } from './trueFilm.ts';

// Source of every expectation: the times that were read from the clips by eye (tests/footage/real).

const names = ['barbell-squat-rear34', 'barbell-deadlift-rear34', 'bodyweight-squat-5fps'] as const;
const measured = new Map<string, MeasuredTrueClip>();
const clipOf = (name: string): MeasuredTrueClip => {
  const clip = measured.get(name);
  if (!clip) throw new Error(`${name} was not measured`);
  return clip;
};

beforeAll(async () => {
  for (const name of names) measured.set(name, await measureTrueFilm(trueClip(name)));
}, 600_000);

describe.each(names)('the camera clip %s', (name) => {
  it('has its reps, and not one more', () => {
    const { compared } = clipOf(name);
    expect(compared.missed).toEqual([]);
    expect(compared.invented).toEqual([]);
  });

  it('is seen from three quarters', () => {
    expect(clipOf(name).measurement.view?.view).toBe('oblique');
  });
});

it('times starts, turns and ends: nine of ten within 0.25 s', () => {
  const { edges } = totalsOf(names.map((name) => clipOf(name).compared));
  expect(edges.all.count).toBe(17);
  expect(edges.all.p90).toBeLessThanOrEqual(0.25);
});
