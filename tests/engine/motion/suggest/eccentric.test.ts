import { describe, expect, it } from 'vitest';
import { equalSets } from '../../../../engine/review/plan.ts';
import { eccentrics, pm, rep, setOf, shippedExercise, timed, toMend } from './sets.ts';

// Targets of the back squat for growth: eccentric 2 to 3 s, pause stretched 0 to 1 s, pause shortened 0 to 1 s.

describe('an eccentric that is too quick', () => {
  it('is proposed with the rep that shows it most, at the middle of its eccentric', () => {
    expect(toMend(eccentrics(1.5, 1.2, 2.5))).toEqual([
      {
        id: 'eccentricTempo.tooQuick',
        criterion: 'eccentricTempo',
        fault: 'quickLowering',
        severity: 'adjust',
        reps: [1, 2],
        atS: 21.25,
        measure: { name: 'eccentric', value: 1.2, plusMinus: 0.1, unit: 's' },
        sentence: 'Rep 2 lowers in 1.2 s ± 0.1 s; the target is 2 to 3 s. Rep 1 shows it too.',
      },
    ]);
  });

  it.each([
    ['within its uncertainty', 1.95, 0.1, []],
    ['at the edge of it', 1.9, 0.1, []],
    ['sure, but printed as the target', 1.96, 0.01, []],
    ['by little', 1.75, 0.1, ['prefer']],
    ['by more than 0.3 s', 1.6, 0.1, ['adjust']],
  ])('%s', (_, value, plusMinus, severities) => {
    expect(toMend([timed(1, { eccentric: pm(value, plusMinus) })]).map(({ severity }) => severity)).toEqual(severities);
  });

  it('names a run of reps by its ends', () => {
    const [quick] = toMend(eccentrics(1.2, 1.3, 1.3, 1.3, 2.5, 1.3));
    expect(quick?.sentence).toMatch(/Reps 2 to 4 and 6 show it too\.$/);
    expect(quick?.reps).toEqual([1, 2, 3, 4, 6]);
  });

  it('is called a return where the load rises in it', () => {
    const exercise = shippedExercise('pulldown');
    expect(toMend(eccentrics(1.2), { exercise })[0]?.sentence).toMatch(/^Rep 1 returns in 1\.2 s/);
  });

  it('weighs what the fault weighs in the exercise, and never "stop"', () => {
    const exercise = shippedExercise('kneeling-hamstring-lowering');
    expect(toMend(eccentrics(1.2), { exercise })).toMatchObject([{ fault: 'quickLowering', severity: 'correct' }]);
    const squat = shippedExercise('back-squat');
    const faults = squat.faults.map((fault) => ({ ...fault, usualSeverity: 'stop' as const }));
    expect(toMend(eccentrics(1.2), { exercise: { ...squat, faults } })).toMatchObject([{ severity: 'correct' }]);
  });

  it('has no fault where the exercise has none that says it', () => {
    const exercise = { ...shippedExercise('back-squat'), faults: [] };
    expect(toMend(eccentrics(1.2), { exercise })).toMatchObject([
      { id: 'eccentricTempo.tooQuick', criterion: 'eccentricTempo', fault: null, severity: 'adjust' },
    ]);
  });
});

describe('the goal and the plan', () => {
  it('strength asks for 1.5 s', () => {
    expect(toMend(eccentrics(1.6), { goal: 'strength' })).toEqual([]);
    expect(toMend(eccentrics(1.6), { goal: 'skill' })[0]?.sentence).toMatch(/the target is 2 to 4 s/);
  });

  it.each([
    ['4-0-X-0', 2.8, 'Rep 1 lowers in 2.8 s ± 0.1 s; the plan asks for 4 s.'],
    ['4-0-X-0', 3.2, undefined],
    ['1-0-X-0', 1.2, undefined],
    ['1-0-X-0', 0.3, 'Rep 1 lowers in 0.3 s ± 0.1 s; the plan asks for 1 s.'],
    ['1-0-X-0', 2.3, 'Rep 1 lowers in 2.3 s ± 0.1 s; the plan asks for 1 s.'],
    ['0-1-X-0', 1.2, 'Rep 1 lowers in 1.2 s ± 0.1 s; the target is 2 to 3 s.'],
  ])('a plan of %s and %d s', (tempo, value, sentence) => {
    expect(toMend(eccentrics(value), { plan: equalSets({ sets: 3, reps: 5, tempo }) })[0]?.sentence).toBe(sentence);
  });
});

describe('the whole set', () => {
  it('slower than useful is no more than a preference', () => {
    expect(toMend(eccentrics(3.8))).toEqual([]);
    expect(toMend(eccentrics(6))).toMatchObject([{ fault: 'slowerThanUseful', severity: 'prefer' }]);
  });

  it('getting quicker within the target is told from the first rep', () => {
    const [fades, ...others] = toMend(eccentrics(3.4, 2.9, 2.5, 2.0));
    expect(others).toEqual([]);
    expect(fades).toMatchObject({ id: 'eccentricTempo.fades', fault: 'tempoFades', severity: 'prefer', reps: [4] });
    expect(fades?.sentence).toMatch(/^Rep 4 lowers in 2\.0 s ± 0\.1 s, rep 1 in 3\.4 s ± 0\.1 s;/);
    expect(fades?.measure.value).toBeCloseTo(1.4);
    expect(fades?.measure.plusMinus).toBeCloseTo(0.2);
  });

  it('falling from too slow to what is asked is no fading', () => {
    expect(toMend(eccentrics(3.9, 3.4, 2.9))).toEqual([]);
  });

  it('differing up and down is told without a fault', () => {
    expect(toMend(eccentrics(2.1, 3.4, 2.9))).toMatchObject([
      { id: 'eccentricTempo.varies', fault: null, severity: 'prefer', reps: [1] },
    ]);
  });
});

describe('the way of one eccentric', () => {
  const timesS = Array.from({ length: 101 }, (_, i) => 10 + i / 40);
  const squat = rep(1, {
    durationsS: { eccentric: pm(2.5, 0.05), pauseStretched: null, concentric: null, pauseShortened: null },
    peakConcentricMps: pm(0.6, 0.015),
  });
  const found = (curves: { readonly heightM?: number[]; readonly speedMps?: number[] }) => {
    const measurement = setOf([squat], {
      timesS,
      heightM: timesS.map(() => null),
      speedMps: timesS.map(() => null),
      ...curves,
    });
    return toMend([], { measurement }).map(({ fault, atS }) => ({ fault, atS }));
  };
  const share = (timeS: number) => (timeS - 10) / 2.5;

  it('two humps of speed are uneven, at the dip between them', () => {
    const [uneven] = found({ speedMps: timesS.map((timeS) => -0.4 * Math.abs(Math.sin(2 * Math.PI * share(timeS)))) });
    expect(uneven?.fault).toBe('unevenLowering');
    expect(uneven?.atS).toBeCloseTo(11.25);
    expect(found({ speedMps: timesS.map((timeS) => -0.4 * Math.sin(Math.PI * share(timeS))) })).toEqual([]);
  });

  it('a fall through the last third is told', () => {
    // height = −share⁴: the last third begins at (2/3)^(1/4) = 0.904 of the time and takes 9.6 % of it.
    expect(found({ heightM: timesS.map((timeS) => -0.5 * share(timeS) ** 4) })).toEqual([
      { fault: 'lastPartDrops', atS: 11.25 },
    ]);
    expect(found({ heightM: timesS.map((timeS) => -0.5 * share(timeS)) })).toEqual([]);
  });
});
