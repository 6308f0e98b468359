import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { RepMeasurement } from '../../../../engine/motion/measurement.ts';
import { joints, pm, rep, suggestionsFor, toMend } from './sets.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const uncertain = (min: number, max: number, widest: number) =>
  fc.record({ value: between(min, max), plusMinus: between(0, widest) });

/** A rep of anything that a measure can be. */
const anyRep = fc
  .record({
    eccentric: uncertain(0, 8, 1),
    pauseStretched: uncertain(0, 8, 1),
    pauseShortened: uncertain(0, 8, 1),
    romM: uncertain(0.1, 1, 0.05),
    driftForwardM: uncertain(0, 0.3, 0.05),
    driftBackM: uncertain(0, 0.3, 0.05),
    downOnWayUpM: uncertain(0, 0.1, 0.02),
    headTrunkDeg: uncertain(-90, 90, 30),
    depthM: uncertain(-0.3, 0.3, 0.05),
    bounces: fc.nat({ max: 4 }),
  })
  .map(
    ({ eccentric, pauseStretched, pauseShortened, headTrunkDeg, depthM, ...known }) =>
      (index: number): RepMeasurement =>
        rep(index, {
          ...known,
          durationsS: { eccentric, pauseStretched, concentric: null, pauseShortened },
          joints: joints({
            headTrunkDeg,
            depthM,
            depthOutcome:
              Math.abs(depthM.value) < depthM.plusMinus ? 'tooClose' : depthM.value < 0 ? 'reached' : 'short',
          }),
        }),
  );
const anySet = fc.array(anyRep, { minLength: 1, maxLength: 6 }).map((reps) => reps.map((make, at) => make(at + 1)));

it('the order in which reps are given is irrelevant', () => {
  fc.assert(
    fc.property(
      anySet.chain((reps) =>
        fc.tuple(fc.constant(reps), fc.shuffledSubarray(reps, { minLength: reps.length, maxLength: reps.length })),
      ),
      ([reps, shuffled]) => {
        expect(suggestionsFor(shuffled)).toEqual(suggestionsFor(reps));
      },
    ),
  );
});

it('nothing is to be mended while every measure is within its uncertainty of one thing that is asked', () => {
  // A back squat for growth: eccentric 2 to 3 s, pauses of up to 1 s, the path within 5 cm, the head within 20°.
  const about = (value: number, widest: number) =>
    fc.tuple(between(0, widest), between(-1, 1)).map(([plusMinus, share]) => pm(value + share * plusMinus, plusMinus));
  const asked = fc.record({
    eccentric: between(2, 3),
    pause: between(0, 1),
    rom: between(0.2, 0.8),
    drift: between(0, 0.05),
    head: between(-20, 20),
  });
  const setAbout = asked.chain((at) => {
    const one = fc.record({
      eccentric: about(at.eccentric, 1),
      pauseStretched: about(at.pause, 1),
      pauseShortened: about(at.pause, 1),
      romM: about(at.rom, 0.1),
      driftForwardM: about(at.drift, 0.05),
      driftBackM: about(at.drift, 0.05),
      downOnWayUpM: about(0, 0.05),
      headTrunkDeg: about(at.head, 30),
      depthM: about(0, 0.1),
    });
    return fc.array(one, { minLength: 1, maxLength: 6 });
  });
  fc.assert(
    fc.property(setAbout, (values) => {
      const reps = values.map(({ eccentric, pauseStretched, pauseShortened, headTrunkDeg, depthM, ...known }, at) =>
        rep(at + 1, {
          ...known,
          bounces: 1,
          durationsS: { eccentric, pauseStretched, concentric: null, pauseShortened },
          joints: joints({ headTrunkDeg, depthM, depthOutcome: 'tooClose' }),
        }),
      );
      expect(toMend(reps)).toEqual([]);
    }),
  );
});

type Worse = (rep: RepMeasurement, by: number) => RepMeasurement;
const longer = (phase: 'eccentric' | 'pauseStretched' | 'pauseShortened', sign: 1 | -1): Worse => {
  return (one, by) => {
    const was = one.durationsS[phase];
    const durationsS = { ...one.durationsS, [phase]: was && { ...was, value: was.value + sign * by } };
    return { ...one, durationsS };
  };
};

it.each<[string, Worse]>([
  ['eccentricTempo.tooQuick', longer('eccentric', -1)],
  ['eccentricTempo.tooSlow', longer('eccentric', 1)],
  ['pauses.longPauseTooLong', longer('pauseStretched', 1)],
  ['pauses.shortPauseTooLong', longer('pauseShortened', 1)],
  ['barPath.driftsForward', (one, by) => ({ ...one, driftForwardM: more(one.driftForwardM, by / 10) })],
  ['barPath.driftsBack', (one, by) => ({ ...one, driftBackM: more(one.driftBackM, by / 10) })],
  ['barPath.goesBack', (one, by) => ({ ...one, downOnWayUpM: more(one.downOnWayUpM, by / 10) })],
  [
    'depth.short',
    (one, by) => ({ ...one, joints: one.joints && { ...one.joints, depthM: more(one.joints.depthM, by / 10) } }),
  ],
  ['pauses.rebounds', (one) => ({ ...one, bounces: (one.bounces ?? 0) + 1 })],
])('%s stays, for the same reps, and never weighs less, as a rep that shows it misses by more', (id, worse) => {
  const severities = ['prefer', 'adjust', 'correct'];
  fc.assert(
    fc.property(anySet, fc.nat(), between(0, 3), (reps, pick, by) => {
      const before = suggestionsFor(reps).find((one) => one.id === id);
      fc.pre(before !== undefined);
      const index = before.reps[pick % before.reps.length];
      const after = suggestionsFor(reps.map((one) => (one.index === index ? worse(one, by) : one)));
      const same = after.find((one) => one.id === id);
      expect(same?.reps).toEqual(before.reps);
      expect(severities.indexOf(same?.severity ?? '')).toBeGreaterThanOrEqual(severities.indexOf(before.severity));
    }),
    { numRuns: 30 },
  );
});

/** Sets whose measures are sure enough that they fade now and then. */
const sureSet = fc
  .array(
    fc.record({
      eccentric: uncertain(1, 4, 0.05),
      pauseStretched: uncertain(0, 2, 0.05),
      romM: uncertain(0.3, 0.6, 0.01),
    }),
    { minLength: 3, maxLength: 6 },
  )
  .map((reps) =>
    reps.map(({ eccentric, pauseStretched, romM }, at) =>
      rep(at + 1, { romM, durationsS: { eccentric, pauseStretched, concentric: null, pauseShortened: null } }),
    ),
  );

it.each<[string, Worse]>([
  ['depth.fades', (one, by) => ({ ...one, romM: more(one.romM, -by / 10) })],
  ['eccentricTempo.fades', longer('eccentric', -1)],
  ['pauses.longPauseShrinks', longer('pauseStretched', -1)],
])('%s stays as the last rep falls further', (id, worse) => {
  fc.assert(
    fc.property(sureSet, between(0, 3), (reps, by) => {
      fc.pre(suggestionsFor(reps).some((one) => one.id === id));
      const last = reps.length;
      const after = suggestionsFor(reps.map((one) => (one.index === last ? worse(one, by) : one)));
      expect(after.map((one) => one.id)).toContain(id);
    }),
    { numRuns: 30 },
  );
});

function more(was: RepMeasurement['romM'], by: number) {
  return was && { ...was, value: was.value + by };
}
