import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { readChosenPictures, readPictures } from '../../../../../electron/backend/media/read/readPictures.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import type { Crop, TurnDeg } from '../../../../../engine/framing/framing.ts';
import { seenPart, seenSize, turnedSize } from '../../../../../engine/framing/picturePlaces.ts';
import { ffmpeg } from '../clips.ts';

/** A picture of 64 × 32 whose quarters are four greys: a b over c d. */
const [a, b, c, d] = [40, 90, 140, 190];
const quarters = `lum='if(lt(Y,16),if(lt(X,32),${a},${b}),if(lt(X,32),${c},${d}))':cb=100:cr=150`;

let folder: string;
let file: string;
let probe: Awaited<ReturnType<typeof probeClip>>;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'rackside-quarters-'));
  file = path.join(folder, 'quarters.mp4');
  const source = `nullsrc=size=64x32:rate=10,format=yuv420p,geq=${quarters}`;
  await ffmpeg(
    '-f',
    'lavfi',
    '-i',
    source,
    '-frames:v',
    '4',
    '-c:v',
    'libx264',
    '-pix_fmt',
    'yuv420p',
    '-qp',
    '0',
    file,
  );
  probe = await probeClip(await findMediaTools(), file);
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Seen = { readonly turnDeg?: TurnDeg; readonly mirrored?: boolean; readonly brightness?: number };
type Picture = { readonly bytes: Uint8Array; readonly width: number; readonly height: number };

async function picture(
  { turnDeg = 0, mirrored = false, brightness = 1 }: Seen,
  crop: Crop | null = null,
): Promise<Picture> {
  const shown = { ...turnedSize(probe.shown, turnDeg), turnDeg };
  const look = { crop, mirrored, brightness };
  const size = seenSize(seenPart(shown, look));
  const tools = await findMediaTools();
  const reading = { table: probe.table, shown, look, planes: 'colour', lastFrame: 0 } as const;
  for await (const { bytes } of readPictures(tools, file, reading)) {
    const chosen = { table: probe.table, frames: [2], size, from: { shown, look } };
    for await (const again of readChosenPictures(tools, file, chosen)) expect(again.bytes).toEqual(bytes);
    return { bytes, ...size };
  }
  throw new Error('No picture came.');
}

/** The greys of the corners, as one reads: upper left, upper right, lower left, lower right. */
function corners({ bytes, width, height }: Picture): number[] {
  const at = (x: number, y: number) => bytes[y * width + x] ?? -1;
  return [at(4, 4), at(width - 5, 4), at(4, height - 5), at(width - 5, height - 5)];
}

describe('the corners of a picture', () => {
  // By hand, with a sheet of paper: turned to the right by so much, then seen in a mirror.
  it.each([
    [0, false, [a, b, c, d]],
    [90, false, [c, a, d, b]],
    [180, false, [d, c, b, a]],
    [270, false, [b, d, a, c]],
    [0, true, [b, a, d, c]],
    [90, true, [a, c, b, d]],
    [180, true, [c, d, a, b]],
    [270, true, [d, b, c, a]],
  ] as const)('turned by %i°, mirrored: %s', async (turnDeg, mirrored, expected) => {
    const seen = await picture({ turnDeg, mirrored });
    expect([seen.width, seen.height]).toEqual(turnDeg % 180 === 0 ? [64, 32] : [32, 64]);
    expect(corners(seen)).toEqual(expected);
  });

  it('are those of the part that is cut out', async () => {
    const right = { leftPx: 32, topPx: 0, widthPx: 32, heightPx: 32 };
    expect(corners(await picture({}, right))).toEqual([b, b, d, d]);
    expect(corners(await picture({ mirrored: true }, right))).toEqual([b, b, d, d]);
    const lowerHalfOfTurned = { leftPx: 0, topPx: 32, widthPx: 32, heightPx: 32 };
    expect(corners(await picture({ turnDeg: 90 }, lowerHalfOfTurned))).toEqual([d, b, d, b]);
  });
});

describe('the light of a picture', () => {
  it.each([0.5, 1.1])('times %f is that many times as far above black', async (brightness) => {
    const expected = [a, b, c, d].map((grey) => 16 + (grey - 16) * brightness);
    const seen = corners(await picture({ brightness }));
    for (const [index, grey] of expected.entries()) expect(Math.abs((seen[index] ?? 0) - grey)).toBeLessThanOrEqual(1);
  });

  it('never goes beyond white, and colour grows with it', async () => {
    const { bytes } = await picture({ brightness: 1.5 });
    expect(Math.max(...bytes.subarray(0, 64 * 32))).toBe(235);
    expect([bytes[64 * 32], bytes[64 * 32 + 16 * 32]]).toEqual([86, 161]);
  });
});

it('reads the frames of a section by their numbers within it', async () => {
  const within = { table: probe.table, firstFrame: 2 };
  const table = { ...probe.table, ticks: probe.table.ticks.slice(2) };
  const frames: number[] = [];
  for await (const { frame } of readPictures(await findMediaTools(), file, {
    ...{ table, within, shown: probe.shown, planes: 'grey' },
  })) {
    frames.push(frame);
  }
  expect(frames).toEqual([0, 1]);
});
