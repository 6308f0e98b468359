import { describe, expect, test } from 'vitest';
import { trackBody } from '../../../../engine/motion/joints/bodyTrack.ts';
import { bodyHeightPx } from '../../../../engine/motion/joints/lifter.ts';
import { postureReader } from '../../../../engine/motion/joints/posture.ts';
import { smoothPoints, withoutJumps } from '../../../../engine/motion/joints/smoothPoints.ts';
import { type Body, type JointName, jointNames } from '../../../../engine/recording/recording.ts';
import { inputOf, knownLifter } from './knownLifter.ts';

/** Uneven moments, as a phone makes them. */
const moments = Array.from({ length: 60 }, (_, i) => i / 30 + 0.012 * Math.sin(i * i));

describe('smoothing over time', () => {
  test('a parabola stays what it is, whatever the moments', () => {
    const way = (atS: number) => ({ xPx: 3 + 40 * atS - 25 * atS * atS, yPx: 100 * atS });
    const places = smoothPoints(
      moments.map((atS) => ({ atS, ...way(atS) })),
      moments,
    );
    moments.slice(6, -6).forEach((atS, i) => {
      expect(places[i + 6]?.xPx).toBeCloseTo(way(atS).xPx, 6);
      expect(places[i + 6]?.yPx).toBeCloseTo(way(atS).yPx, 6);
    });
  });

  test('a short gap is bridged on the line; a long one is left open', () => {
    const line = (lostS: number) => {
      const samples = moments.filter((atS) => atS < 0.8 || atS > 0.8 + lostS);
      return smoothPoints(
        samples.map((atS) => ({ atS, xPx: 50 * atS, yPx: 7 })),
        moments,
      );
    };
    const within = (fromS: number, toS: number) => moments.flatMap((atS, i) => (atS > fromS && atS < toS ? [i] : []));
    for (const i of within(0.8, 1)) expect(line(0.2)[i]?.xPx).toBeCloseTo(50 * (moments[i] ?? 0), 6);
    for (const i of within(0.86, 1.34)) expect(line(0.6)[i]).toBeNull();
  });

  test('of five samples a second one may be missing, two may not', () => {
    const sparse = Array.from({ length: 20 }, (_, i) => i / 5);
    const without = (lost: readonly number[]) =>
      smoothPoints(
        sparse.filter((_, i) => !lost.includes(i)).map((atS) => ({ atS, xPx: 50 * atS, yPx: 7 })),
        sparse,
      );
    expect(without([9])[9]?.xPx).toBeCloseTo(50 * 1.8, 6);
    expect(without([9, 10])[9]).toBeNull();
  });

  test('a place that jumps is left out, a quick steady way is not', () => {
    const samples = moments.map((atS, i) => ({ atS, xPx: 300 * atS + (i === 30 ? 80 : 0), yPx: 0 }));
    const left = withoutJumps(samples, 20);
    expect(left).toHaveLength(samples.length - 1);
    expect(left).not.toContain(samples[30]);
  });
});

describe('a recording put in order', () => {
  const lifter = knownLifter('split-squat-turned');
  const input = inputOf(lifter);
  const [first] = lifter.reps;
  if (first === undefined) throw new Error('no rep');
  const kneeAt = (frames: readonly (Body | null)[]) => {
    const track = trackBody({ ...input, joints: { frames } });
    const knee = track && postureReader(track).at(first.farFrame).knee;
    return knee !== null && 'value' in knee ? knee.value : Number.NaN;
  };

  test('legs that the network takes for each other in some frames are put right', () => {
    const frames = input.joints.frames.map((body, i) => (body && i % 9 < 2 ? swapLegs(body) : body));
    expect(kneeAt(frames)).toBeCloseTo(kneeAt(input.joints.frames), 0);
  });

  test('a leg that jumps to somebody else for two frames changes nothing', () => {
    const frames = input.joints.frames.map((body, i) =>
      body && Math.abs(i - first.farFrame) === 1 ? body.map((joint) => ({ ...joint, xPx: joint.xPx + 120 })) : body,
    );
    expect(Math.abs(kneeAt(frames) - kneeAt(input.joints.frames))).toBeLessThan(2);
  });

  test('every second frame tells nearly the same as every one', () => {
    const frames = input.joints.frames.map((body, i) => (i % 2 === 0 ? body : null));
    expect(Math.abs(kneeAt(frames) - kneeAt(input.joints.frames))).toBeLessThan(2);
  });

  test('a stretch in which nobody is seen has no angle', () => {
    const frames = input.joints.frames.map((body, i) => (Math.abs(i - first.farFrame) < 15 ? null : body));
    expect(kneeAt(frames)).toBeNaN();
  });

  test('a knee beyond the picture’s edge is said to be there', () => {
    const track = trackBody({ ...input, picture: { width: 480, height: 400 } });
    const knee = track && postureReader(track).at(first.farFrame).knee;
    expect(knee).toMatchObject({ why: 'outOfFrame' });
  });

  test('a hand-held camera’s way, taken out, leaves the ankle behind the disc where it stands', () => {
    const hinge = knownLifter('hinge-side');
    const still = inputOf(hinge);
    const frames = hinge.timesS.map((atS) => ({
      ...{ shiftXPx: 9 * Math.sin(2 * atS), shiftYPx: 6 * Math.sin(3 * atS), turnDeg: Math.sin(atS), scale: 1 },
    }));
    const shaken = trackBody({
      ...still,
      camera: { moves: true, removable: true, frames, uprights: [] },
      joints: { frames: still.joints.frames.map((body, i) => body?.map((joint) => seenBy(frames[i], joint)) ?? null) },
      disc: still.disc && {
        ...still.disc,
        frames: still.disc.frames.map((place, i) => place && seenBy(frames[i], place)),
      },
    });
    const steady = trackBody(still);
    if (shaken === null || steady === null) throw new Error('nobody seen');
    for (const { farFrame } of hinge.reps) {
      const [one, other] = [postureReader(shaken).at(farFrame), postureReader(steady).at(farFrame)];
      for (const angle of ['knee', 'trunkLean', 'shankLean'] as const) {
        const [a, b] = [one[angle], other[angle]];
        if (!('value' in a && 'value' in b)) throw new Error(`no ${angle}`);
        expect(Math.abs(a.value - b.value)).toBeLessThan(1.5);
      }
    }
  });

  test('nobody in the picture: no track, no height', () => {
    const nobody = { frames: lifter.timesS.map(() => null) };
    expect(trackBody({ ...input, joints: nobody })).toBeNull();
    expect(bodyHeightPx(nobody)).toBeNull();
  });

  test.each([
    ['the head', ['nose', 'leftEye', 'rightEye', 'leftEar', 'rightEar']],
    ['the feet', ['leftAnkle', 'rightAnkle']],
    ['the legs', ['leftKnee', 'rightKnee', 'leftAnkle', 'rightAnkle']],
  ] as const)('the height is told to a tenth also where %s can’t be seen', (_, hidden: readonly JointName[]) => {
    const frames = input.joints.frames.map(
      (body) =>
        body?.map((joint, i) =>
          hidden.some((name) => name === jointNames[i]) ? { ...joint, confidence: 0.05 } : joint,
        ) ?? null,
    );
    const whole = bodyHeightPx(input.joints) ?? Number.NaN;
    expect(Math.abs((bodyHeightPx({ frames }) ?? Number.NaN) / whole - 1)).toBeLessThan(0.1);
  });
});

function swapLegs(body: Body): Body {
  const order = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 11, 14, 13, 16, 15];
  return order.flatMap((i) => body[i] ?? []);
}

type Move = { readonly shiftXPx: number; readonly shiftYPx: number; readonly turnDeg: number };

/** Where a camera that moved so sees a place of the first frame: first = R(turn) × here + shift. */
function seenBy<P extends { readonly xPx: number; readonly yPx: number }>(move: Move | undefined, place: P): P {
  if (move === undefined) return place;
  const turn = (move.turnDeg * Math.PI) / 180;
  const x = place.xPx - move.shiftXPx;
  const y = place.yPx - move.shiftYPx;
  return { ...place, xPx: x * Math.cos(turn) + y * Math.sin(turn), yPx: y * Math.cos(turn) - x * Math.sin(turn) };
}
