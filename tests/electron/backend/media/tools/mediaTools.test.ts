import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  describeMediaTools,
  findMediaTools,
  isNewer,
  passthroughOptions,
  readToolVersion,
} from '../../../../../electron/backend/media/tools/mediaTools.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-tools-'));
afterAll(() => rmSync(folder, { recursive: true }));
beforeEach(() => {
  vi.stubEnv('FFMPEG_PATH', undefined);
  vi.stubEnv('FFPROBE_PATH', undefined);
});
afterEach(() => vi.unstubAllEnvs());

// First lines of released builds, from memory; the codec library's numbers are those of ffmpeg's release notes.
const releases = {
  '4.1': versionText('4.1', '58. 35.100'),
  '5.1.6-0+deb12u1': versionText('5.1.6-0+deb12u1', '59. 37.100'),
  '7.1': versionText('7.1', '61. 19.100'),
};

function versionText(label: string, library: string): string {
  return `ffmpeg version ${label} Copyright (c) 2000-2024 the FFmpeg developers\nlibavutil 1. 2.100 / 1. 2.100\nlibavcodec     ${library} / ${library}\n`;
}

/** Every encoder, decoder and filter that stands in a command under electron/backend/media. */
const allNeeded = [
  ...['libx264', 'aac', 'libopus', 'mjpeg', 'rawvideo', 'pcm_s16le'],
  ...['h264', 'hevc', 'vp8', 'vp9', 'mpeg4', 'prores', 'mp3', 'opus'],
  ...['scale', 'format', 'crop', 'hflip', 'vflip', 'transpose', 'lutyuv', 'setsar', 'select', 'setpts', 'fps', 'tile'],
  'trim',
  'aresample',
];

function version(label: keyof typeof releases) {
  const read = readToolVersion(releases[label]);
  if (read === null) throw new Error('not read');
  return read;
}

/** A program that prints its version, and lists encoders, decoders and filters in ffmpeg's way. */
function fakeProgram(name: string, output: string, listed: readonly string[] = allNeeded): string {
  const place = path.join(folder, name);
  mkdirSync(place, { recursive: true });
  const file = path.join(place, 'ffmpeg');
  const list = listed.map((word) => ` V....D ${word}   words about it\n`).join('');
  writeFileSync(file, `#!/bin/sh\ncat <<'END'\n${output}${list}END\n`);
  chmodSync(file, 0o755);
  return file;
}

describe('the version of a build', () => {
  it('is read with its label', () => {
    expect(version('5.1.6-0+deb12u1')).toEqual({ label: '5.1.6-0+deb12u1', codecLibrary: [59, 37] });
    expect(readToolVersion('bash: ffmpeg: command not found')).toBeNull();
  });

  it('orders builds', () => {
    expect(isNewer(version('7.1'), version('4.1'))).toBe(true);
    expect(isNewer(version('4.1'), version('7.1'))).toBe(false);
    expect(isNewer(version('4.1'), version('4.1'))).toBe(false);
  });

  // ffmpeg's changelog: -fps_mode was added, and -vsync deprecated, in 5.1.
  it('decides how frames keep their times', () => {
    expect(passthroughOptions(version('4.1'))).toEqual(['-vsync', 'passthrough']);
    expect(passthroughOptions(version('5.1.6-0+deb12u1'))).toEqual(['-fps_mode', 'passthrough']);
    expect(passthroughOptions(version('7.1'))).toEqual(['-fps_mode', 'passthrough']);
  });
});

describe('which program is used', () => {
  it('is the bundled one when PATH has none', async () => {
    vi.stubEnv('PATH', folder);
    const tools = await findMediaTools();
    expect([tools.ffmpeg.origin, tools.ffprobe.origin]).toEqual(['bundled', 'bundled']);
    expect(describeMediaTools(tools)).toMatch(/^ffmpeg \S+ \(bundled\), ffprobe \S+ \(bundled\)$/);
  });

  it('is the one on PATH when that is newer', async () => {
    const file = fakeProgram('newer', releases['7.1']);
    vi.stubEnv('PATH', `${path.dirname(file)}${path.delimiter}/bin${path.delimiter}/usr/bin`);
    expect((await findMediaTools()).ffmpeg).toMatchObject({ path: file, version: version('7.1'), origin: 'path' });
  });

  // What many systems carry for fear of patents.
  it.each(['libx264', 'lutyuv'])('is the bundled one when a newer one on PATH has no %s', async (missing) => {
    const left = allNeeded.filter((word) => word !== missing);
    const file = fakeProgram(`without ${missing}`, releases['7.1'], left);
    vi.stubEnv('PATH', `${path.dirname(file)}${path.delimiter}/bin${path.delimiter}/usr/bin`);
    expect((await findMediaTools()).ffmpeg.origin).toBe('bundled');
  });

  it('is the bundled one when the one on PATH is older', async () => {
    const file = fakeProgram('older', versionText('3.4', '57.107.100'));
    vi.stubEnv('PATH', `${path.dirname(file)}${path.delimiter}/bin${path.delimiter}/usr/bin`);
    expect((await findMediaTools()).ffmpeg.origin).toBe('bundled');
  });

  it('is the one the environment names, whatever its age', async () => {
    const file = fakeProgram('named', releases['4.1']);
    vi.stubEnv('FFMPEG_PATH', file);
    expect((await findMediaTools()).ffmpeg).toMatchObject({ path: file, origin: 'environment' });
  });

  it('is refused when the environment names something else', async () => {
    vi.stubEnv('FFMPEG_PATH', path.join(folder, 'nothing'));
    await expect(findMediaTools()).rejects.toThrow(
      /^FFMPEG_PATH names a program that does not run as ffmpeg, so nothing was changed; /,
    );
  });
});
