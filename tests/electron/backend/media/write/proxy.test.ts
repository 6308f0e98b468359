import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { packetOptions, readPackets } from '../../../../../electron/backend/media/probe/frameTimes.ts';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { runFfprobe } from '../../../../../electron/backend/media/tools/runFfprobe.ts';
import { makeProxy } from '../../../../../electron/backend/media/write/proxy.ts';
import { ffmpeg, findClip } from '../clips.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-proxy-'));
afterAll(() => rmSync(folder, { recursive: true }));
const tools = await findMediaTools();

describe('a playable copy', () => {
  it.each(['hinge-hevc', 'squat-variable-rate', 'press-portrait'])('of %s matches it frame for frame', async (name) => {
    const source = await probeClip(tools, findClip(name));
    const file = path.join(folder, `${name}.mp4`);
    const playback = await makeProxy(tools, findClip(name), file, { table: source.table });
    const copy = await probeClip(tools, file);

    expect(playback).toEqual(copy.table);
    expect(copy.table.ticks).toEqual(source.table.ticks);
    expect(copy.table.timeBase).toEqual(source.table.timeBase);
    expect([copy.plays, copy.facts.codec, copy.facts.rotationDeg]).toEqual(['as-is', 'h264', 0]);
    expect(copy.shown).toEqual(source.shown);
    expect(copy.hasAudio).toBe(source.hasAudio);

    // The same moments: each copied frame differs little from its original, measured on small grey pictures.
    const small = (path: string) =>
      ffmpeg('-i', path, '-vsync', '0', '-vf', 'scale=32:32,format=gray', '-f', 'rawvideo', '-');
    const [original, copied] = await Promise.all([small(findClip(name)), small(file)]);
    expect(copied.length).toBe(original.length);
    const worst = original.reduce((most, value, index) => Math.max(most, Math.abs(value - (copied[index] ?? 0))), 0);
    expect(worst).toBeLessThan(16);
  });

  it.each(['24', '25', '50', '60', '30000/1001'])(
    'of a clip of %s frames a second has its last frame too',
    async (rate) => {
      const clip = path.join(folder, 'even.mov');
      await ffmpeg('-f', 'lavfi', '-i', `testsrc=s=64x48:r=${rate}`, '-frames:v', '40', '-c:v', 'mjpeg', clip);
      const { table } = await probeClip(tools, clip);
      expect(await makeProxy(tools, clip, path.join(folder, 'even.mp4'), { table })).toEqual(table);
    },
  );

  it('has a key frame every 12 frames and shows frames in the order they are stored', async () => {
    const { table } = await probeClip(tools, findClip('hinge-hevc'));
    const file = path.join(folder, 'short groups.mp4');
    await makeProxy(tools, findClip('hinge-hevc'), file, { table });
    const listing = await runFfprobe(tools, file, packetOptions(0), undefined);
    if (listing.kind === 'failed') throw new Error(listing.stderr);
    const keys = listing.stdout.split('\n').flatMap((line, index) => (line.includes('flags=K') ? [index] : []));
    for (const [index, key] of keys.entries()) expect(key - (keys[index - 1] ?? 0)).toBeLessThanOrEqual(12);
    expect(table.ticks.length - (keys.at(-1) ?? 0)).toBeLessThanOrEqual(12);
    const stored = readPackets(listing.stdout).map(({ pts }) => pts ?? 0);
    expect(stored).toEqual(stored.toSorted((first, second) => first - second));
  });

  it.each([
    ['wide', '3840x2160', 1920, 1080],
    ['tall', '1080x2400', 864, 1920],
    ['odd', '321x241', 320, 240],
  ])('of a %s clip of %s is %d × %d', async (name, size, width, height) => {
    const large = path.join(folder, `${name}.avi`);
    await ffmpeg('-f', 'lavfi', '-i', `testsrc=s=${size}:r=10:d=0.4`, '-c:v', 'mjpeg', '-pix_fmt', 'yuvj444p', large);
    const { table } = await probeClip(tools, large);
    const file = path.join(folder, `${name} copy.mp4`);
    await makeProxy(tools, large, file, { table });
    const { facts } = await probeClip(tools, file);
    expect([facts.width, facts.height, facts.frames]).toEqual([width, height, 4]);
  });

  it('is given up when cancelled, with nothing left', async () => {
    const quiet = path.join(folder, 'cancelled');
    const controller = new AbortController();
    const long = path.join(folder, 'long.mp4');
    await ffmpeg('-f', 'lavfi', '-i', 'testsrc=s=1280x720:r=60:d=6', '-c:v', 'libx264', '-preset', 'ultrafast', long);
    const { table } = await probeClip(tools, long);
    const work = makeProxy(tools, long, path.join(quiet, 'copy.mp4'), {
      table,
      signal: controller.signal,
      onProgress: () => controller.abort(),
    });
    await expect(work).rejects.toMatchObject({ problem: { code: 'cancelled' } });
    expect(readdirSync(quiet)).toEqual([]);
  });

  it('of frames that do not decode is refused, and nothing is left', async () => {
    const { table } = await probeClip(tools, findClip('hinge-hevc'));
    const words = path.join(folder, 'words.mp4');
    writeFileSync(words, 'no video');
    const file = path.join(folder, 'never.mp4');
    await expect(makeProxy(tools, words, file, { table })).rejects.toMatchObject({ problem: { code: 'bad-media' } });
    expect(existsSync(file)).toBe(false);
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  it('is refused when its frames are not those of the table', async () => {
    const { table } = await probeClip(tools, findClip('hinge-hevc'));
    const file = path.join(folder, 'short by one.mp4');
    const wrong = { ...table, ticks: [...table.ticks, table.endTicks], endTicks: table.endTicks + 256 };
    const work = makeProxy(tools, findClip('hinge-hevc'), file, { table: wrong });
    await expect(work).rejects.toThrow('has 424 frames, but only 423 could be decoded');
    expect(existsSync(file)).toBe(false);
  });
});
