import { describe, expect, test } from 'vitest';
import { trackBody } from '../../../../engine/motion/joints/bodyTrack.ts';
import { outcomeOf } from '../../../../engine/motion/joints/depth.ts';
import { measureRepJoints, type RepToMeasure } from '../../../../engine/motion/joints/measureRepJoints.ts';
import { postureReader } from '../../../../engine/motion/joints/posture.ts';
import type { Measured } from '../../../../engine/motion/measurement.ts';
import { sayUnseenToCoach } from '../../../../engine/wording/sayMeasuring.ts';
import { inputOf, type KnownLifter, knownLifter, lifterNames } from './knownLifter.ts';

type KnownRep = KnownLifter['reps'][number];

function repOf(lifter: KnownLifter, { startS, endS, farFrame }: KnownRep): RepToMeasure {
  return {
    span: { startS, endS },
    stretchedEndFrame: farFrame,
    setUpFrame: 5,
    scale: { metresPerPixel: lifter.metresPerPixel, relativeUncertainty: 0.01 },
    depthClick: null,
    backClicks: null,
  };
}

function trackOf(lifter: KnownLifter) {
  const track = trackBody(inputOf(lifter));
  if (track === null) throw new Error('nobody seen');
  return track;
}

const measured = lifterNames.map((name) => {
  const lifter = knownLifter(name);
  const track = trackOf(lifter);
  const posture = postureReader(track);
  return {
    name,
    lifter,
    track,
    reps: lifter.reps.map((truth) => ({ truth, joints: measureRepJoints(track, posture, repOf(lifter, truth)) })),
  };
});
const allReps = measured.flatMap(({ reps }) => reps);
const squats = measured.filter(({ name }) => name.includes('squat')).flatMap(({ reps }) => reps);

const middle = (numbers: readonly number[]) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];
const errors = (pairs: readonly (readonly [Measured | null, number])[]) =>
  pairs.flatMap(([told, truth]) => (told === null ? [] : [Math.abs(told.value - truth)]));
const covered = (pairs: readonly (readonly [Measured | null, number])[]) => {
  const told = pairs.flatMap(([one, truth]) => (one === null ? [] : [Math.abs(one.value - truth) <= one.plusMinus]));
  return told.filter(Boolean).length / told.length;
};

describe('lifters whose posture is known', () => {
  test.each(measured)('$name: the way they face and the side that shows', ({ lifter, track }) => {
    expect(track.facing).toBe(lifter.nearSide);
    expect(track.nearSide).toBe(lifter.nearSide);
  });

  test.each(measured)(
    '$name: standing height within 12 % in the disc’s scale, the body being a sixth further away',
    ({ lifter, track }) => {
      const heightM = track.heightPx * lifter.metresPerPixel * 1.17;
      expect(Math.abs(heightM / lifter.heightM - 1)).toBeLessThan(0.12);
    },
  );

  test('at the stretched end, knee and trunk are told to 6 degrees, half of the time', () => {
    const knees = allReps.map(({ truth, joints }) => [joints.kneeDeg, truth.kneeDeg] as const);
    const trunks = allReps.map(({ truth, joints }) => [joints.trunkLeanDeg, truth.trunkLeanDeg] as const);
    expect(errors(knees)).toHaveLength(allReps.length);
    expect(middle(errors(knees))).toBeLessThanOrEqual(6);
    expect(middle(errors(trunks))).toBeLessThanOrEqual(6);
  });

  test.each([
    ['kneeDeg', 'kneeDeg'],
    ['hipDeg', 'hipDeg'],
    ['trunkLeanDeg', 'trunkLeanDeg'],
    ['trunkLeanMaxDeg', 'trunkLeanMaxDeg'],
    ['shankLeanDeg', 'shankLeanDeg'],
    ['headTrunkDeg', 'neckDeg'],
  ] as const)('%s: the interval holds the truth nine times in ten', (told, truth) => {
    expect(covered(allReps.map((rep) => [rep.joints[told], rep.truth[truth]] as const))).toBeGreaterThanOrEqual(0.9);
  });

  test('depth: the interval holds the truth nine times in ten, and no outcome is wrong', () => {
    const depths = squats.map(({ truth, joints }) => [joints.depthM, truth.depthM] as const);
    expect(errors(depths)).toHaveLength(squats.length);
    expect(covered(depths)).toBeGreaterThanOrEqual(0.9);
    for (const { truth, joints } of squats) {
      expect(joints.depthFrom).toBe('joints');
      if (joints.depthOutcome === 'reached') expect(truth.depthM).toBeLessThan(0);
      if (joints.depthOutcome === 'short') expect(truth.depthM).toBeGreaterThan(0);
    }
    const outcomes = measured[0]?.reps.map(({ joints }) => joints.depthOutcome);
    expect(outcomes?.slice(0, 2)).toEqual(['short', 'reached']);
  });

  test('nods of a head that shows are told by their direction', () => {
    const nods = allReps.filter(({ truth, joints }) => joints.headTrunkDeg && Math.abs(truth.neckDeg) > 20);
    expect(nods.length).toBeGreaterThanOrEqual(3);
    for (const { truth, joints } of nods)
      expect(Math.sign(joints.headTrunkDeg?.value ?? 0)).toBe(Math.sign(truth.neckDeg));
  });

  test('a face behind the disc is said to be there, and its angle is left out', () => {
    for (const { joints } of measured[0]?.reps ?? []) {
      expect(joints.headTrunkDeg).toBeNull();
      expect(joints.unseen.map((one) => sayUnseenToCoach(one, 'en')).join(' ')).toMatch(
        /behind the disc, so the head against the trunk can’t be measured/,
      );
    }
  });

  test.each(lifterNames)('%s, mirrored: faces the other way, with the same angles', (name) => {
    const lifter = knownLifter(name);
    const mirrored = mirror(lifter);
    const track = trackOf(mirrored);
    expect(track.facing).not.toBe(lifter.nearSide);
    const posture = postureReader(track);
    const straight = postureReader(trackOf(lifter));
    for (const { farFrame } of lifter.reps) {
      expect(posture.at(farFrame)).toEqual(closeTo(straight.at(farFrame)));
    }
  });

  test.each([-8, 8])('a camera rolled by %i degrees changes no angle when the roll is known', (rollDeg) => {
    const lifter = knownLifter('squat-side');
    const input = inputOf(lifter);
    const rolled = trackBody({
      ...input,
      rollDeg,
      joints: { frames: input.joints.frames.map((body) => body?.map((joint) => roll(joint, rollDeg)) ?? null) },
      disc: input.disc && { ...input.disc, frames: input.disc.frames.map((at) => at && roll(at, rollDeg)) },
      picture: { width: 2000, height: 2000 },
    });
    if (rolled === null) throw new Error('nobody seen');
    const straight = postureReader(trackOf(lifter));
    for (const { farFrame } of lifter.reps) {
      expect(postureReader(rolled).at(farFrame)).toEqual(closeTo(straight.at(farFrame)));
    }
  });
});

describe('depth by clicks', () => {
  test.each(squats)('rep with a depth of $truth.depthAtFarM m', ({ truth }) => {
    const owner = measured.find(({ reps }) => reps.some((rep) => rep.truth === truth));
    if (owner === undefined) throw new Error('no such rep');
    const { lifter, track } = owner;
    const [creaseX, creaseY] = truth.hipCreasePx;
    const [kneeX, kneeY] = truth.kneeTopPx;
    const depthClick = {
      frame: truth.farFrame,
      hipCrease: { xPx: creaseX, yPx: creaseY },
      kneeTop: { xPx: kneeX, yPx: kneeY },
    };
    const joints = measureRepJoints(track, postureReader(track), { ...repOf(lifter, truth), depthClick });
    expect(joints.depthFrom).toBe('clicks');
    expect(Math.abs((joints.depthM?.value ?? 9) - truth.depthAtFarM)).toBeLessThanOrEqual(
      joints.depthM?.plusMinus ?? 0,
    );
    // Clicks are surer than joints.
    expect(joints.depthM?.plusMinus).toBeLessThan(0.04);
  });

  test('a depth within its uncertainty is too close to call', () => {
    expect(outcomeOf({ value: 0.03, plusMinus: 0.031 })).toBe('tooClose');
    expect(outcomeOf({ value: -0.03, plusMinus: 0.031 })).toBe('tooClose');
    expect(outcomeOf({ value: 0.032, plusMinus: 0.031 })).toBe('short');
    expect(outcomeOf({ value: -0.032, plusMinus: 0.031 })).toBe('reached');
  });
});

function mirror(lifter: KnownLifter): KnownLifter {
  const flip = (x: number) => lifter.width - x;
  const order = [0, 2, 1, 4, 3, 6, 5, 8, 7, 10, 9, 12, 11, 14, 13, 16, 15];
  return {
    ...lifter,
    disc: lifter.disc.map(([x, y]) => [flip(x), y]),
    joints: lifter.joints.map(
      (numbers) =>
        numbers &&
        order.flatMap((i) => [10 * flip((numbers[3 * i] ?? 0) / 10), numbers[3 * i + 1] ?? 0, numbers[3 * i + 2] ?? 0]),
    ),
  };
}

/** Turned about the picture's middle, so that upright things lean by so much to the right. */
function roll<P extends { readonly xPx: number; readonly yPx: number }>(place: P, rollDeg: number): P {
  const turn = (rollDeg * Math.PI) / 180;
  const x = place.xPx - 427;
  const y = place.yPx - 240;
  return {
    ...place,
    xPx: 1000 + x * Math.cos(turn) - y * Math.sin(turn),
    yPx: 1000 + x * Math.sin(turn) + y * Math.cos(turn),
  };
}

function closeTo(posture: object): object {
  return Object.fromEntries(
    Object.entries(posture).map(([name, reading]) => [
      name,
      'value' in reading ? { ...reading, value: expect.closeTo(reading.value, 1) } : reading,
    ]),
  );
}
