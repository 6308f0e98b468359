import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import {
  everyFramesFor,
  type JointReaderOptions,
  openJointReader,
} from '../../../../../electron/backend/measure/joints/jointReader.ts';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { readPictures } from '../../../../../electron/backend/media/read/readPictures.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { bendDeg } from '../../../../../engine/motion/joints/angles.ts';
import {
  type Body,
  type JointName,
  jointNames,
  jointRecordingSchema,
  type PointPx,
} from '../../../../../engine/recording/recording.ts';
import { warning } from '../../../../../engine/recording/warnings.ts';
import { findClip } from '../../media/clips.ts';

type Pictures = readonly { readonly frame: number; readonly bytes: Uint8Array }[];

const clipSize = { width: 854, height: 480 };
/** Lowest frames of the clip's first rep: the lifter's right side shows. */
const lowest = { firstFrame: 76, lastFrame: 87 };
/** Joint centres of the figure in frame 80, in pixels, and the bend of its knee in the picture. */
const truth = { rightHip: [385.2, 319.7], rightKnee: [467.6, 353.6], rightAnkle: [427, 436.9] } as const;
const kneeDeg = 94;
const standingPx = 420;

async function picturesOf(
  name: string,
  frames: { readonly firstFrame: number; readonly lastFrame: number },
): Promise<Pictures> {
  const tools = await findMediaTools();
  const { table, shown } = await probeClip(tools, findClip(name));
  const pictures: { frame: number; bytes: Uint8Array }[] = [];
  for await (const picture of readPictures(tools, findClip(name), { table, shown, planes: 'colour', ...frames })) {
    pictures.push(picture);
  }
  return pictures;
}

async function read(pictures: Pictures, options: JointReaderOptions) {
  const reader = await openJointReader(options);
  try {
    for (const { frame, bytes } of pictures) await reader.push(frame, bytes);
    return await reader.finish();
  } finally {
    await reader.close();
  }
}

function jointIn(body: Body | null | undefined, name: JointName): PointPx {
  const joint = body?.[jointNames.indexOf(name)];
  if (joint === undefined) throw new Error(`no ${name}`);
  return joint;
}

const squat = await picturesOf('squat-side', lowest);
const size = { picture: clipSize, workers: 2, framesPerSecond: 30 };

describe('the lifter’s joints in a clip', () => {
  test('lie where the figure’s are, the hip towards its crease', async () => {
    const { joints, warnings } = await read(squat, size);
    expect(v.is(jointRecordingSchema, joints)).toBe(true);
    expect(warnings).toEqual([]);
    expect(joints.frames).toHaveLength(lowest.lastFrame + 1);
    for (const { frame } of squat) {
      const body = joints.frames[frame];
      for (const name of ['rightHip', 'rightKnee', 'rightAnkle'] as const) {
        const { xPx, yPx } = jointIn(body, name);
        const [x, y] = truth[name];
        expect(Math.hypot(xPx - x, yPx - y) / standingPx).toBeLessThan(name === 'rightHip' ? 0.05 : 0.035);
      }
      const bend = bendDeg(jointIn(body, 'rightHip'), jointIn(body, 'rightKnee'), jointIn(body, 'rightAnkle'));
      expect(Math.abs(bend - kneeDeg)).toBeLessThan(13);
    }
  });

  test('are the same with one thread and with three', async () => {
    const one = await read(squat.slice(0, 7), { ...size, workers: 1 });
    const three = await read(squat.slice(0, 7), { ...size, workers: 3 });
    expect(three).toEqual(one);
  });

  test('are looked for at every second frame when asked', async () => {
    const { joints } = await read(squat.slice(0, 5), { ...size, everyFrames: 2 });
    const seen = joints.frames.flatMap((body, frame) => (body === null ? [] : [frame]));
    expect(seen).toEqual([76, 78, 80]);
    expect(joints.everyFrames).toBe(2);
  });

  test('the given bytes stay as they were, to be used by others', async () => {
    const before = squat[0]?.bytes.slice();
    await read(squat.slice(0, 1), size);
    expect(squat[0]?.bytes).toEqual(before);
  });

  test('nobody there: no joints, and a warning', async () => {
    const bytes = new Uint8Array(854 * 480 + 2 * 427 * 240).fill(16, 0, 854 * 480).fill(128, 854 * 480);
    const black = Array.from({ length: 8 }, (_, frame) => ({ frame, bytes }));
    const { joints, warnings } = await read(black, size);
    expect(joints.frames).toEqual(black.map(() => null));
    expect(warnings).toEqual([warning('nobodySeen', {})]);
  });

  test('no frames: an empty recording without a word', async () => {
    expect(await read([], size)).toEqual({ joints: expect.objectContaining({ frames: [] }), warnings: [] });
  });
});

/** Everything that the reader asks to see, also what it asks to see again. */
async function readWholly(pictures: Pictures, options: JointReaderOptions) {
  const reader = await openJointReader(options);
  try {
    for (const { frame, bytes } of pictures) await reader.push(frame, bytes);
    for (;;) {
      const again = await reader.framesToSeeAgain();
      if (again.length === 0) return await reader.finish();
      for (const frame of again) await reader.push(frame, pictures[frame]?.bytes ?? new Uint8Array());
    }
  } finally {
    await reader.close();
  }
}

describe('of two people, one of whom keeps still', () => {
  // A few frames of each clip that go down and up again, four a second; beside them the first frame of the other clip.
  const wide = { picture: { width: 1708, height: 480 }, workers: 1, framesPerSecond: 4 };
  const beside = async (moving: string, still: string): Promise<Pictures> => {
    const frames = (await picturesOf(moving, { firstFrame: 20, lastFrame: 150 })).filter(
      ({ frame }) => frame % 11 === 0,
    );
    const [frozen] = await picturesOf(still, { firstFrame: 0, lastFrame: 0 });
    return frames.map(({ bytes }, frame) => ({ frame, bytes: joined(bytes, frozen?.bytes ?? bytes) }));
  };
  const kneesOf = ({ joints }: Awaited<ReturnType<typeof readWholly>>) =>
    joints.frames.map((body) => jointIn(body, 'rightKnee').xPx);

  test('the one who moves is the lifter from the first look on', async () => {
    const found = await readWholly(await beside('squat-side', 'hinge-side'), wide);
    for (const xPx of kneesOf(found)) expect(xPx).toBeLessThan(854);
  });

  test('a click on the other one wins', async () => {
    const pictures = (await beside('squat-side', 'hinge-side')).slice(0, 6);
    const clicks = [{ frame: 3, at: { xPx: 854 + 430, yPx: 250 } }];
    const found = await readWholly(pictures, { ...wide, clicks });
    expect(found.warnings).toEqual([]);
    for (const xPx of kneesOf(found)) expect(xPx).toBeGreaterThan(854);
  });

  test('a click on nobody is told, and changes nothing', async () => {
    const pictures = (await beside('squat-side', 'hinge-side')).slice(0, 4);
    const clicks = [{ frame: 3, at: { xPx: 20, yPx: 20 } }];
    const { warnings } = await readWholly(pictures, { ...wide, clicks });
    expect(warnings).toEqual([warning('nobodyAtClick', { frame: 3 })]);
  });
});

describe('of two people', () => {
  // Both stand side by side in one picture; the squatting one is on the left, the one who hinges on the right.
  const sideBySide = async (): Promise<Pictures> => {
    const hinge = await picturesOf('hinge-side', { firstFrame: 0, lastFrame: 5 });
    return hinge.map(({ bytes }, i) => ({ frame: i, bytes: joined(squat[i]?.bytes ?? bytes, bytes) }));
  };
  const both = { picture: { width: 1708, height: 480 }, workers: 2, framesPerSecond: 30 };
  const middleX = (body: Body | null | undefined) => jointIn(body, 'rightKnee').xPx;

  test.each([
    ['left', 440, (x: number) => x < 854],
    ['right', 854 + 430, (x: number) => x > 854],
  ] as const)('the one on the %s is followed when the bar is there', async (_, barX, isThere) => {
    const { joints } = await read(await sideBySide(), { ...both, near: () => ({ xPx: barX, yPx: 215 }) });
    for (const body of joints.frames) expect(isThere(middleX(body))).toBe(true);
  });
});

test.each([
  [24, 1],
  [29.97, 1],
  [30, 1],
  [50, 2],
  [60, 2],
  [120, 4],
  [240, 8],
])('of %s frames a second, every %i is looked at', (framesPerSecond, every) => {
  expect(everyFramesFor(framesPerSecond)).toBe(every);
});

/** Two pictures of the clips' size, plane by plane, beside each other. */
function joined(left: Uint8Array, right: Uint8Array): Uint8Array {
  const { width, height } = clipSize;
  const rows = [
    ...Array.from({ length: height }, (_, y) => [y * width, width] as const),
    ...Array.from({ length: height }, (_, y) => [width * height + (y * width) / 2, width / 2] as const),
  ];
  const out = new Uint8Array(left.length * 2);
  let at = 0;
  for (const [start, length] of rows) {
    out.set(left.subarray(start, start + length), at);
    out.set(right.subarray(start, start + length), at + length);
    at += 2 * length;
  }
  return out;
}
