import { describe, expect, it } from 'vitest';
import { oneBody } from '../../../../engine/motion/joints/oneBody.ts';
import { jointOf } from '../../../../engine/motion/joints/points.ts';
import { swappedSides } from '../../../../engine/motion/joints/swappedSides.ts';
import { type Body, type JointName, jointNames } from '../../../../engine/recording/recording.ts';
import { inputOf, knownLifter } from './knownLifter.ts';

const { joints } = inputOf(knownLifter('split-squat-turned'));
const timesOf = (frames: readonly unknown[], framesPerSecond: number) => frames.map((_, i) => i / framesPerSecond);
const timesS = timesOf(joints.frames, 30);

const movedBy = (body: Body | null, xPx: number, yPx: number): Body | null =>
  body?.map((joint) => ({ ...joint, xPx: joint.xPx + xPx, yPx: joint.yPx + yPx })) ?? null;

const otherName = (name: JointName): JointName => {
  const other = name.startsWith('left') ? name.replace('left', 'right') : name.replace('right', 'left');
  return jointNames.find((one) => one === other) ?? name;
};
/** The body with the joints of both sides called by each other's names. */
const mirrored = (body: Body | null): Body | null =>
  body && jointNames.map((name) => body[jointNames.indexOf(otherName(name))] ?? { xPx: 0, yPx: 0, confidence: 0 });

describe('one body through a clip', () => {
  it('is kept as it is where nobody else was seen', () => {
    expect(oneBody(joints, timesS)).toEqual(joints.frames);
  });

  it('keeps looks in which the legs can’t be made out, every other frame', () => {
    const frames = joints.frames.map((body, frame) =>
      frame % 2 === 0
        ? body
        : (body?.map((joint, i) => (/Knee|Ankle/.test(jointNames[i] ?? '') ? { ...joint, confidence: 0.1 } : joint)) ??
          null),
    );
    expect(oneBody({ frames }, timesS)).toEqual(frames);
  });

  it.each([
    ['a single look', 1],
    ['half a second', 15],
    ['two seconds', 60],
  ])('loses those who were seen in its place for %s', (_, looks) => {
    const isStranger = (frame: number) => frame >= 120 && frame < 120 + looks;
    const frames = joints.frames.map((body, frame) => (isStranger(frame) ? movedBy(body, 400, -60) : body));
    const kept = oneBody({ frames }, timesS);
    expect(kept).toEqual(joints.frames.map((body, frame) => (isStranger(frame) ? null : body)));
  });

  it('is the one that was seen most, also when the clip begins with somebody else', () => {
    const frames = joints.frames.map((body, frame) => (frame < 50 ? movedBy(body, 500, 0) : body));
    const kept = oneBody({ frames }, timesS);
    expect(kept.slice(0, 50).every((body) => body === null)).toBe(true);
    expect(kept.slice(50)).toEqual(joints.frames.slice(50));
  });

  it('is followed across a pan of the camera, a walk, and five frames a second', () => {
    const panned = joints.frames.map((body, frame) => movedBy(body, 5 * frame, 40 * Math.sin(frame / 9)));
    expect(oneBody({ frames: panned }, timesS)).toEqual(panned);
    const sparse = joints.frames.filter((_, frame) => frame % 6 === 0);
    expect(oneBody({ frames: sparse }, timesOf(sparse, 5))).toEqual(sparse);
  });
});

describe('sides that the network takes for each other', () => {
  const heightPx = 400;
  const swapsIn = (isSwapped: (frame: number) => boolean) => {
    const frames = joints.frames.map((body, frame) => (isSwapped(frame) ? mirrored(body) : body));
    const swapped = swappedSides({ frames }, { timesS, heightPx });
    return frames.flatMap((body, frame) => (body !== null && swapped(frame, 'knee') ? [frame] : []));
  };

  it('are found where they are, and nowhere in a clip without them', () => {
    const own = new Set(swapsIn(() => false));
    expect(own.size).toBeLessThan(0.03 * joints.frames.length);
    const inSecond = swapsIn((frame) => frame >= 100 && frame < 130).filter((frame) => !own.has(frame));
    expect(inSecond.length).toBeGreaterThanOrEqual(28);
    expect(inSecond.every((frame) => frame >= 99 && frame <= 130)).toBe(true);
  });

  it('are left as they are where the whole clip calls them so', () => {
    expect(swapsIn(() => true).length).toBeLessThan(0.03 * joints.frames.length);
  });

  it('do not stay swapped after a gap in which nobody was seen', () => {
    const frames = joints.frames
      .map((body, frame) => (frame >= 100 && frame < 160 ? null : body))
      .map((body, frame) => (frame >= 60 && frame < 100 ? mirrored(body) : body));
    const swapped = swappedSides({ frames }, { timesS, heightPx });
    const after = frames.flatMap((body, frame) => (body !== null && frame >= 160 ? [swapped(frame, 'knee')] : []));
    expect(after.filter(Boolean).length).toBeLessThan(0.05 * after.length);
    expect(swapped(80, 'knee')).toBe(true);
    expect(jointOf(joints.frames[80] ?? [], 'knee', 'left').confidence).toBeGreaterThan(0);
  });
});
