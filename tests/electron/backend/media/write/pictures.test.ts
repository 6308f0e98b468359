import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { makeFilmstrip, makePoster } from '../../../../../electron/backend/media/write/pictures.ts';
import { ffmpeg, findClip, greyOfTiles } from '../clips.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-pictures-'));
const ramp = path.join(folder, 'ramp.mp4');
afterAll(() => rmSync(folder, { recursive: true }));

// Four seconds that brighten evenly: grey 40 at the start, 50 more each second.
beforeAll(async () => {
  const source = `color=black:s=64x64:r=50:d=4,geq=lum='40+50*T':cb=128:cr=128`;
  await ffmpeg(
    '-f',
    'lavfi',
    '-i',
    source,
    '-c:v',
    'libx264',
    '-qp',
    '5',
    '-pix_fmt',
    'yuv420p',
    '-color_range',
    'tv',
    ramp,
  );
});

/** Studio-range grey of the ramp at a time, as the full-range value a JPEG holds. */
const greyAt = (seconds: number) => ((40 + 50 * seconds - 16) * 255) / 219;

describe('a poster', () => {
  it.each([0, 1, 2.5])('shows the clip at %d s', async (seconds) => {
    const file = path.join(folder, `at ${seconds}.jpg`);
    await makePoster(await findMediaTools(), ramp, file, { atUs: seconds * 1_000_000 });
    const [grey] = await greyOfTiles(file, 1);
    expect(Math.abs((grey ?? 0) - greyAt(seconds))).toBeLessThan(4);
  });

  it('stands upright', async () => {
    const file = path.join(folder, 'upright.jpg');
    await makePoster(await findMediaTools(), findClip('press-portrait'), file, { atUs: 1_000_000 });
    const grey = await ffmpeg('-i', file, '-vf', 'format=gray', '-f', 'rawvideo', '-');
    expect(grey.length).toBe(480 * 854);
    const wide = await ffmpeg('-i', file, '-vf', 'scale=480:854,format=gray', '-f', 'rawvideo', '-');
    expect(wide.equals(grey)).toBe(true);
  });
});

describe('a filmstrip', () => {
  it('shows the middle of each equal part, left to right', async () => {
    const file = path.join(folder, 'strip.jpg');
    const shares: number[] = [];
    const onProgress = (share: number) => shares.push(share);
    await makeFilmstrip(await findMediaTools(), ramp, file, {
      pictures: 8,
      heightPx: 32,
      durationUs: 4_000_000,
      onProgress,
    });
    const greys = await greyOfTiles(file, 8);
    expect(greys).toHaveLength(8);
    greys.forEach((grey, index) => {
      expect(Math.abs(grey - greyAt(0.25 + 0.5 * index))).toBeLessThan(5);
    });
    expect(shares.at(-1)).toBe(1);
  });

  it('fills every picture of a clip with long gaps between frames', async () => {
    const slow = path.join(folder, 'three frames.mp4');
    await ffmpeg('-i', ramp, '-vf', 'fps=1,negate', '-c:v', 'libx264', slow);
    const file = path.join(folder, 'slow strip.jpg');
    await makeFilmstrip(await findMediaTools(), slow, file, { pictures: 12, heightPx: 32, durationUs: 4_000_000 });
    const greys = await greyOfTiles(file, 12);
    expect(greys).toHaveLength(12);
    for (const grey of greys) expect(grey).toBeGreaterThan(10);
  });
});

describe('a picture that cannot be made', () => {
  it('past the end of the clip is refused', async () => {
    const file = path.join(folder, 'late.jpg');
    const work = makePoster(await findMediaTools(), ramp, file, { atUs: 9_000_000 });
    await expect(work).rejects.toMatchObject({ problem: { code: 'bad-media' } });
    expect(readdirSync(folder)).not.toContain('late.jpg');
  });

  it('in a folder that is a file is refused', async () => {
    const work = makePoster(await findMediaTools(), ramp, path.join(ramp, 'poster.jpg'), { atUs: 0 });
    await expect(work).rejects.toMatchObject({ problem: { code: 'disk' } });
  });
});

describe('cancelling', () => {
  it('leaves nothing behind', async () => {
    const quiet = path.join(folder, 'cancelled');
    const signal = AbortSignal.abort();
    const work = makePoster(await findMediaTools(), ramp, path.join(quiet, 'never.jpg'), { atUs: 0, signal });
    await expect(work).rejects.toMatchObject({ problem: { code: 'cancelled' } });
    expect(readdirSync(folder)).not.toContain('cancelled');
  });
});
