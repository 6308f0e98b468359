import { describe, expect, it } from 'vitest';
import { isAtHand } from '../../engine/exercises/equipment.ts';
import { shipped } from './shippedCatalogue.ts';

const lower = [
  ...['squat', 'lunge', 'hinge', 'hip extension', 'sled press', 'knee extension'],
  ...['knee flexion', 'calf raise', 'olympic lift'],
];
const lifts = shipped.exercises.filter(({ pattern }) => lower.includes(pattern));
const texts = shipped.translations?.find(({ language }) => language === 'de')?.texts ?? {};
const isId = (name: string): boolean => /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(name);

describe('the ladders of the lower body', () => {
  it.each(lifts)('$id has an easier and a harder rung, each with its reason, in both languages', ({ ladder }) => {
    expect(ladder.easier.length).toBeGreaterThanOrEqual(1);
    expect(ladder.harder.length).toBeGreaterThanOrEqual(1);
    for (const { exercise, why } of [...ladder.easier, ...ladder.harder, ...ladder.betterSuited]) {
      expect(why, exercise).toMatch(/^[A-Z].*\.$/);
      expect(texts, exercise).toHaveProperty([why]);
      if (!isId(exercise)) expect(texts).toHaveProperty([exercise]);
    }
  });

  it.each(lifts)('$id names no exercise as a step both up and down, by whichever of the two it is told', (lift) => {
    for (const { exercise: id } of lift.ladder.harder) {
      const harder = shipped.exercises.find((one) => one.id === id);
      expect(harder?.ladder.harder.map(({ exercise }) => exercise) ?? [], id).not.toContain(lift.id);
    }
  });

  it.each(lifts)('$id is found by everyday names in both languages, and says what it needs', ({ aliases, needs }) => {
    expect(aliases?.en.length).toBeGreaterThanOrEqual(1);
    expect(aliases?.de.length).toBeGreaterThanOrEqual(1);
    expect(needs).toBeDefined();
  });

  it('offers work for thighs, glutes and calves to somebody at home with nothing', () => {
    const atHome = lifts.filter((lift) => isAtHand(lift, 'home')).flatMap(({ muscles }) => muscles.direct);
    for (const muscle of ['quadriceps', 'glutes', 'hamstrings', 'calves']) expect(atHome).toContain(muscle);
  });

  it('counts few repetitions as the nature of a lift only where they are', () => {
    const few = lifts.filter(({ lowRepByDesign }) => lowRepByDesign).map(({ id }) => id);
    expect(few).toContain('kneeling-hamstring-lowering');
    for (const id of ['back-squat', 'deadlift', 'good-morning', 'bodyweight-squat']) expect(few).not.toContain(id);
  });
});
