import { describe, expect, it } from 'vitest';
import { loadAtPlaceKg, type Plan } from '../../../engine/review/plan.ts';

const falling: Plan = {
  sets: [
    { reps: 8, loadKg: 90 },
    { reps: 12, loadKg: 70 },
    { reps: 20, loadKg: 0 },
  ],
};

describe('the planned load of the set that a clip shows', () => {
  it('is that of the set in its place where every set was filmed', () => {
    expect([0, 1, 2].map((index) => loadAtPlaceKg(falling, { index, of: 3 }))).toEqual([90, 70, 0]);
  });

  it('is not known where some sets were not filmed, or more clips than sets', () => {
    expect(loadAtPlaceKg(falling, { index: 0, of: 1 })).toBeUndefined();
    expect(loadAtPlaceKg(falling, { index: 0, of: 4 })).toBeUndefined();
  });

  it('is the one load that all sets have', () => {
    const sets = [8, 10, 12].map((reps) => ({ reps, loadKg: 60 }));
    expect(loadAtPlaceKg({ sets }, { index: 0, of: 1 })).toBe(60);
    expect(loadAtPlaceKg({ sets: [...sets, { reps: 5 }] }, { index: 0, of: 1 })).toBeUndefined();
  });
});
