import { describe, expect, it } from 'vitest';
import type { RepMeasurement } from '../../../../engine/motion/measurement.ts';
import { eccentrics, joints, pausesStretched, pm, rep, shippedExercise, suggestionsFor, timed } from './sets.ts';

const kept = (...given: Parameters<typeof suggestionsFor>) =>
  suggestionsFor(...given).filter(({ severity }) => severity === 'keep');

const good = (index: number, change: Partial<RepMeasurement> = {}): RepMeasurement =>
  rep(index, {
    durationsS: { eccentric: pm(2.5, 0.1), pauseStretched: pm(0.8, 0.1), concentric: null, pauseShortened: null },
    romM: pm(0.55, 0.01),
    driftForwardM: pm(0.02, 0.01),
    driftBackM: pm(0.01, 0.01),
    joints: joints({ depthM: pm(-0.05, 0.02), depthOutcome: 'reached', headTrunkDeg: pm(5, 5) }),
    ...change,
  });

describe('praise', () => {
  it('is for two criteria at most that every rep meets', () => {
    expect(suggestionsFor([good(1), good(2)])).toMatchObject([
      { id: 'depth.met', fault: null, severity: 'keep', reps: [1, 2] },
      { id: 'eccentricTempo.met', sentence: 'Every rep lowers in 2.5 s ± 0.1 s; the target is 2 to 3 s.' },
    ]);
  });

  it('tells how deep the least deep rep goes and how far the head moves at most, each with the widest ±', () => {
    const reps = [
      good(1),
      good(2, { joints: joints({ depthM: pm(-0.06, 0.031), depthOutcome: 'reached', headTrunkDeg: pm(-8, 2) }) }),
    ].map((one) => ({ ...one, durationsS: timed(1, {}).durationsS }));
    expect(kept(reps).map(({ id, sentence }) => [id, sentence])).toEqual([
      ['depth.met', 'Every rep brings the hip crease below the top of the knee, by at least 5 cm ± 4 cm.'],
      ['barPath.met', 'Every rep stays within 2 cm ± 1 cm of its path; up to 5 cm is fine.'],
    ]);
    const heads = reps.map((one) => ({ ...one, driftBackM: null }));
    expect(kept(heads)[1]?.sentence).toBe(
      'Every rep keeps the head within 10° ± 10° of its place against the trunk; up to 20° is fine.',
    );
  });

  it('shows the rep that has most room', () => {
    const [tempo] = kept(eccentrics(2.2, 2.5, 2.8));
    expect(tempo).toMatchObject({ measure: { value: 2.5 }, atS: 21.25, reps: [1, 2, 3] });
    expect(tempo?.sentence).toBe('Every rep lowers in 2.2 to 2.8 s ± 0.1 s; the target is 2 to 3 s.');
  });

  it.each([
    ['one rep is not sure', eccentrics(2.5, 2.05, 2.5)],
    ['one rep is not measured', [...eccentrics(2.5, 2.5), rep(3)]],
    ['one rep misses it', eccentrics(2.5, 1.2)],
    ['there are no reps', []],
  ])('is withheld where %s', (_, reps) => {
    expect(kept(reps)).toEqual([]);
  });

  it('names the whole centimetres that hold the path of every rep', () => {
    const reps = [good(1, { joints: null }), good(2, { joints: null, driftBackM: pm(0.022, 0.007) })];
    expect(kept(reps)[1]?.sentence).toBe('Every rep stays within 3 cm ± 1 cm of its path; up to 5 cm is fine.');
  });

  it('is withheld where the criterion is missed in another way', () => {
    const shorter = good(2, { romM: pm(0.45, 0.01) });
    expect(suggestionsFor([good(1), shorter]).map(({ id }) => id)).toEqual([
      'depth.varies',
      'eccentricTempo.met',
      'barPath.met',
    ]);
  });

  it('is for a pause only where one is asked, and lets the last rep end without', () => {
    const exercise = shippedExercise('pull-up');
    const reps = [...pausesStretched(0.7, 0.8), timed(3, { pauseStretched: null })];
    expect(kept(reps, { exercise })).toMatchObject([{ id: 'pauses.met', reps: [1, 2] }]);
    expect(kept(pausesStretched(0.7, 0.8))).toEqual([]);
  });

  it('is for a hold as long as was asked', () => {
    const exercise = shippedExercise('front-plank');
    expect(kept([timed(1, { pauseStretched: pm(30, 0.1) })], { exercise })).toMatchObject([
      { id: 'pauses.met', sentence: 'The rep is held for 30.0 s ± 0.1 s; the target is 20 to 60 s.' },
    ]);
  });
});
