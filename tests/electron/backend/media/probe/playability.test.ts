import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { ffmpeg, findClip } from '../clips.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-plays-'));
afterAll(() => rmSync(folder, { recursive: true }));

// Common practice, no source: what Chromium decodes without the help of the operating system.
describe('a clip plays', () => {
  it.each([
    ['plain.mp4', ['-c:v', 'libx264', '-pix_fmt', 'yuv420p'], 'as-is', ''],
    ['open.webm', ['-c:v', 'libvpx', '-deadline', 'realtime', '-cpu-used', '8'], 'as-is', ''],
    ['full chroma.mp4', ['-c:v', 'libx264', '-pix_fmt', 'yuv422p'], 'proxy', 'yuv422p'],
    ['old.avi', ['-c:v', 'mjpeg'], 'proxy', 'avi'],
    ['old.mp4', ['-c:v', 'mpeg4'], 'proxy', 'MPEG4'],
    ['other.mkv', ['-c:v', 'libx264', '-pix_fmt', 'yuv420p'], 'proxy', 'container'],
  ])('%s', async (name, options, plays, because) => {
    const file = path.join(folder, name);
    await ffmpeg('-i', findClip('squat-side'), '-t', '0.5', '-s', '160x90', ...options, file);
    const probe = await probeClip(await findMediaTools(), file);
    expect(probe.plays).toBe(plays);
    expect(probe.proxyReason).toContain(because);
    expect(probe.proxyReason === '').toBe(plays === 'as-is');
  });

  it('only from a copy when it is HEVC', async () => {
    const probe = await probeClip(await findMediaTools(), findClip('hinge-hevc'));
    expect([probe.plays, probe.proxyReason]).toEqual(['proxy', 'HEVC does not play in every window']);
  });
});
