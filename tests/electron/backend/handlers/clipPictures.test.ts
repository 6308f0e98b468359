import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openBackend } from '../../../../electron/backend/backend.ts';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { numberedClip } from '../handover/package/numberedClip.ts';
import { ffmpeg } from '../media/clips.ts';
import { appFolder, ask, sessionWithClips } from '../workbench.ts';

const root = mkdtempSync(path.join(tmpdir(), 'rackside-clip-pictures-'));
let backend: Backend;
let clipId: string;
let partId: string;

/** A clip of 100 frames of 336 × 240, 25 a second, with its number along the upper edge; cut in two in its middle. */
beforeAll(async () => {
  backend = openBackend({ libraryFolder: path.join(root, 'library'), appFolder });
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  const session = await sessionWithClips(backend, [await numberedClip(root, { name: 'long.mp4', rate: '25' })]);
  const { clipIds } = await ask(backend, 'clips.split', { clipId: session.clipId, cuts: [50] });
  [clipId = '', partId = ''] = clipIds;
});
afterAll(async () => {
  await backend.close();
  rmSync(root, { recursive: true, force: true });
});

const fileOf = async (of: string, what: 'poster' | 'filmstrip') =>
  (await ask(backend, 'media.resolve', { clipId: of, what })).path;

/** The greys of seven bars of each of some pictures side by side, from a part of their height. */
async function barsIn(file: string, pictures: number, from: { top: number; height: number }): Promise<number[][]> {
  const across = `crop=in_w:in_h*${from.height}:0:in_h*${from.top},scale=${pictures * 7}:1:flags=area,format=gray`;
  const greys = [...(await ffmpeg('-i', file, '-vf', across, '-f', 'rawvideo', '-'))];
  return Array.from({ length: pictures }, (_, picture) => greys.slice(7 * picture, 7 * picture + 7));
}
const numberOf = (bars: readonly number[], white = 128): number =>
  bars.reduce((sum, grey, bit) => sum + (grey > white ? 2 ** bit : 0), 0);
const upper = { top: 0.05, height: 0.15 };

async function sizeOf(file: string): Promise<readonly [number, number]> {
  const whole = await ffmpeg('-i', file, '-vf', 'format=gray', '-f', 'rawvideo', '-');
  const row = await ffmpeg('-i', file, '-vf', 'format=gray,crop=in_w:1:0:0', '-f', 'rawvideo', '-');
  return [row.length, whole.length / row.length];
}

it('are of the section that the clip shows', async () => {
  // Each part lasts two seconds: its middle is twenty-five frames after its first.
  for (const [id, number] of [
    [clipId, 25],
    [partId, 75],
  ] as const) {
    expect((await barsIn(await fileOf(id, 'poster'), 1, upper)).map((bars) => numberOf(bars))).toEqual([number]);
  }
  // Eight pictures over frames 50 to 99, each of the middle of its quarter of a second: at 2.125 s frame 53 is on screen, and so on.
  const strip = await barsIn(await fileOf(partId, 'filmstrip'), 8, upper);
  expect(strip.map((bars) => numberOf(bars))).toEqual([53, 59, 65, 71, 78, 84, 90, 96]);
});

it('are turned, mirrored, cut and lit as the clip is', async () => {
  const frame = (change: object) => ask(backend, 'clips.frame', { clipId, change });
  await frame({ turnDeg: 90 });
  expect(await sizeOf(await fileOf(clipId, 'poster'))).toEqual([240, 336]);
  // Upside down, the bars lie along the lower edge, the last first; in a mirror the first is first again.
  await frame({ turnDeg: 180, mirrored: true });
  const [turned = []] = await barsIn(await fileOf(clipId, 'poster'), 1, { top: 0.8, height: 0.15 });
  expect(numberOf(turned)).toBe(25);
  // Only the bars, half as bright: white is 127 of 255.
  const crop = { leftPx: 0, topPx: 0, widthPx: 336, heightPx: 64 };
  await frame({ turnDeg: 0, mirrored: false, crop, brightness: 0.5 });
  const file = await fileOf(clipId, 'poster');
  expect(await sizeOf(file)).toEqual([336, 64]);
  const [bars = []] = await barsIn(file, 1, { top: 0.2, height: 0.6 });
  expect(numberOf(bars, 64)).toBe(25);
  expect(Math.max(...bars)).toBeGreaterThan(120);
  expect(Math.max(...bars)).toBeLessThan(134);
  // What was made for the framings before is gone.
  expect(readdirSync(path.dirname(file)).filter((name) => name.startsWith('poster'))).toEqual([path.basename(file)]);
});

it('are the footage’s own where the clip shows all of it as filmed', async () => {
  await ask(backend, 'clips.trim', { clipId: partId, section: null });
  const file = await fileOf(partId, 'poster');
  expect(path.basename(path.dirname(file))).toBe('pictures');
  expect((await barsIn(file, 1, upper)).map((bars) => numberOf(bars))).toEqual([50]);
});
