import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FoundReps, findReps } from '../../../../engine/motion/reps/findReps.ts';
import { rangeLimits } from '../../../../engine/motion/reps/rangeLimits.ts';
import { pathOfLift } from './readReps.ts';
import { anyWanted, type KindOfLift, kindsOfLift, type Scenario, scenarioOf, type Wanted } from './scenarios.ts';

const lifterM = 1.75;

function foundIn({ kind, lift, fromS, toS, framesPerSecond, noiseM, seed }: Scenario): FoundReps {
  const timesS = Array.from({ length: Math.floor((toS - fromS) * framesPerSecond) + 1 }, (_, i) => i / framesPerSecond);
  const heightAt = (timeS: number) => lift.heightAt(timeS + fromS);
  const { up, noise } = pathOfLift({ ...lift, heightAt }, { timesS, noiseM, seed });
  const values = up.values.filter((value) => value !== null);
  const whole = Math.max(...values) - Math.min(...values);
  const limits = rangeLimits(kind, { bodyHeight: lifterM, inMetres: true, noise, whole });
  return findReps(up, {
    exercise: { ...kind, lowerEnd: 'stretched' },
    limits,
    seenShare: () => 1,
    isGesture: () => false,
  });
}

/** Reps that are slow enough for the frame rate and quick enough for a person. */
const likely = anyWanted.map((wanted) => ({
  ...wanted,
  framesPerSecond: Math.max(10, wanted.framesPerSecond),
  noiseM: Math.min(0.005, wanted.noiseM),
}));

const runs = { numRuns: 40, seed: 14 };
const counted = (kind: KindOfLift, wanted: Wanted) => {
  const scenario = scenarioOf(kind, wanted);
  return { found: foundIn(scenario), scenario };
};

describe.each(kindsOfLift)('any set of the $name', (kind) => {
  it('has as many reps as were done, however it was set up and put down', () => {
    fc.assert(
      fc.property(likely, (wanted) => {
        const { found, scenario } = counted(kind, { ...wanted, failed: 'none' });
        expect(found.counted).toHaveLength(scenario.reps.length);
      }),
      runs,
    );
  });

  it('counts no rep that was given up', () => {
    fc.assert(
      fc.property(likely, (wanted) => {
        const { found, scenario } = counted(kind, {
          ...wanted,
          failed: 'sinksBack',
          count: Math.max(2, wanted.count),
          firstShare: 1,
        });
        expect(found.counted).toHaveLength(scenario.reps.length);
      }),
      runs,
    );
  });

  it('counts no rep whose beginning the clip does not show', () => {
    fc.assert(
      fc.property(likely, fc.double({ min: 0.2, max: 0.9, noNaN: true }), (wanted, cutStart) => {
        const { found, scenario } = counted(kind, {
          ...wanted,
          failed: 'none',
          count: Math.max(2, wanted.count),
          setUp: false,
          cutStart,
          noiseM: 0.001,
        });
        expect(found.counted).toHaveLength(scenario.reps.length);
      }),
      runs,
    );
  });
});

describe('what was not counted', () => {
  const set: Wanted = {
    ...{ count: 3, outS: 1.4, pauseS: 0.3, backS: 1, restS: 0.8, fade: 0, firstShare: 1, failed: 'none' },
    ...{ setUp: true, putDown: true, cutStart: null, cutEnd: null, framesPerSecond: 30, noiseM: 0.001 },
    ...{ sharp: false, longRest: false, seed: 3 },
  };
  const kindNamed = (name: string) => {
    const kind = kindsOfLift.find((one) => one.name === name);
    if (!kind) throw new Error(`no kind of lift ${name}`);
    return kind;
  };

  it.each(['squat', 'bench press', 'deadlift', 'press'])('tells a given-up %s as failed', (name) => {
    const { found } = counted(kindNamed(name), { ...set, failed: 'sinksBack' });
    expect(found.offered.flatMap(({ doubts }) => doubts)).toContain('failed');
  });

  it('tells that the clip ends in a squat', () => {
    const { found } = counted(kindNamed('squat'), { ...set, cutEnd: 0.75 });
    expect(found.counted).toHaveLength(2);
    expect(found.offered.map(({ doubts }) => doubts)).toContainEqual(['cutOffAtEnd']);
  });

  it('is no deadlift whose lock-out the clip shows, though it ends before the way down', () => {
    const { found } = counted(kindNamed('deadlift'), { ...set, cutEnd: 0.6 });
    expect(found.counted).toHaveLength(3);
    const last = found.counted.at(-1);
    expect(last?.moves.eccentric).toBeNull();
    expect(last?.doubts).toEqual(['cutOffAtEnd']);
  });
});
