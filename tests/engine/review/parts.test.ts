import { expect, it } from 'vitest';
import {
  clipOf,
  compareMoments,
  entryOfClip,
  equipmentOf,
  plainReps,
  repIndices,
  setsDone,
} from '../../../engine/review/parts.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import { momentUs } from '../../../engine/time/moment.ts';
import { clip, entry, reps, review, ticks } from '../reviews.ts';

it('gives a moment in media microseconds: from seconds, from ticks, or not at all', () => {
  expect(momentUs({ seconds: 1.2345678 }, undefined)).toBe(1_234_568);
  expect(momentUs({ frame: 1, ticks: 512 }, { timeBase: { numerator: 1, denominator: 15_360 } })).toBe(33_333);
  expect(momentUs({ frame: 1, ticks: 512 }, undefined)).toBeNull();
});

it('compares moments where it can', () => {
  expect(compareMoments({ seconds: 1 }, { seconds: 2 }, clip())).toBeLessThan(0);
  expect(compareMoments({ frame: 9, ticks: 90 }, { frame: 3, ticks: 30 }, clip())).toBeGreaterThan(0);
  expect(compareMoments({ frame: 9, ticks: 90 }, { seconds: 2 }, clip())).toBeNull();
});

it('counts sets done: as stated, else one a clip, at least one', () => {
  expect(setsDone(entry({ setsDone: 4 }))).toBe(4);
  expect(setsDone(entry({ plan: equalSets({ sets: 5, reps: 5 }), clips: [clip(), clip({ id: 'b' })] }))).toBe(2);
  expect(setsDone(entry({ clips: [] }))).toBe(1);
});

it('trains with what the session had, else with what the trainee has', () => {
  const { session, trainee } = review(entry());
  expect(equipmentOf({ session, trainee })).toBeNull();
  expect(equipmentOf({ session, trainee: { ...trainee, equipment: 'home' } })).toBe('home');
  const away = { session: { ...session, equipment: 'fullGym' }, trainee: { ...trainee, equipment: 'home' } } as const;
  expect(equipmentOf(away)).toBe('fullGym');
  // Nothing at all at hand is a statement too.
  expect(equipmentOf({ ...away, session: { ...session, equipment: [] } })).toEqual([]);
});

it('finds what lies on a clip, and the clip itself', () => {
  const two = entry({
    clips: [clip(), clip({ id: 'b' })],
    ticks: ticks('pauses'),
  });
  expect(clipOf(two, 'b')?.id).toBe('b');
  expect(entryOfClip(review(two), 'b')?.id).toBe('e1');
  expect(entryOfClip(review(two), 'z')).toBeUndefined();
});

it('lists reps ascending, each once', () => {
  expect(repIndices(clip({ reps: reps(3).reverse() }))).toEqual([1, 2, 3]);
  expect(plainReps([10, 9, 10])).toEqual([9, 10]);
  expect(plainReps('set')).toBe('set');
});
