import { beforeAll, expect, it } from 'vitest';
import type { MeasuredTrueClip } from '../../../bench/truth/measureTrueClip.ts';
import { measureTrueFilm, trueClip } from './trueFilm.ts';

// Source of every expectation: the truth files written when the clips were made (tests/footage).

const names = [
  'squat-hand-held',
  'hinge-hand-held',
  'squat-three-quarter',
  'press-three-quarter-rear',
  'squat-walk-out',
  'squat-no-bar',
] as const;
const measured = new Map<string, MeasuredTrueClip>();

beforeAll(async () => {
  for (const name of names) measured.set(name, await measureTrueFilm(trueClip(name)));
}, 900_000);

it.each(names)('%s has its reps, and not one more', (name) => {
  const compared = measured.get(name)?.compared;
  expect(compared?.pairs).toHaveLength(trueClip(name).reps.length);
  expect(compared?.invented).toEqual([]);
});
