import { execFileSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { type Confined, reaches, usualMemoryBytes } from '../../../../../electron/backend/media/tools/leastRights.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { fileAddress } from '../../../../../electron/backend/media/tools/safeInput.ts';
import { runTool } from '../../../../../electron/backend/media/tools/startTool.ts';
import { makePoster } from '../../../../../electron/backend/media/write/pictures.ts';
import { ProblemError } from '../../../../../electron/contract/reply.ts';
import { ffmpeg } from '../clips.ts';

let asked: string[] = [];
const listener = createServer((request, response) => {
  asked.push(request.url ?? '');
  response.end('private words');
});
const address = () => `http://127.0.0.1:${(listener.address() as AddressInfo).port}`;
beforeAll(() => new Promise<void>((resolve) => void listener.listen(0, '127.0.0.1', resolve)));
afterAll(() => void listener.close());

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-rights-'));
afterAll(() => rmSync(folder, { recursive: true }));
const found = findMediaTools();
const put = (name: string, content: string): string => {
  const file = path.join(folder, name);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, content);
  return file;
};

const playlist = () => `#EXTM3U\n#EXT-X-TARGETDURATION:9\n#EXTINF:9,\n${address()}/part.ts\n#EXT-X-ENDLIST\n`;

describe('a clip that names other places', () => {
  it.each([
    ['a playlist', 'list.mp4', playlist],
    ['a script', 'script.mp4', () => `ffconcat version 1.0\nfile '${address()}/part.mp4'\n`],
  ])('is refused, and nobody is asked for them: %s', async (_, name, content) => {
    asked = [];
    const file = put(name, content());
    await expect(probeClip(await found, file)).rejects.toThrow(/is not a video/);
    expect(asked).toEqual([]);
  });
});

const works = (words: readonly string[]): boolean => {
  try {
    execFileSync(words[0] ?? '', words.slice(1), { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
};
const hasBubblewrap = works(['bwrap', '--ro-bind', '/', '/', '--unshare-net', 'true']);
const hasUnshare = works(['unshare', '--net', '--map-root-user', 'true']);

// As if the lists of protocols and containers had a hole: ffmpeg is let do what a playlist asks of it.
async function play(reach: Confined['reach'], file: string) {
  const { ffmpeg } = await found;
  const open = ['-v', 'error', '-protocol_whitelist', 'file,http,tcp', '-allowed_extensions', 'ALL'];
  const args = [...open, '-f', 'hls', '-i', fileAddress(file), '-f', 'null', '-'];
  return runTool({ ...ffmpeg, reach }, args, { timeoutMs: 20_000 });
}

describe('a program with least rights', () => {
  it('would reach the network without them', async () => {
    asked = [];
    await play('everything', put('list.m3u8', playlist()));
    expect(asked).toContain('/part.ts');
  });

  it.runIf(hasUnshare).each(['no-network', 'own-files'] as const)('has no network: %s', async (reach) => {
    asked = [];
    const { failed } = await play(reach, put('list.m3u8', playlist()));
    expect({ failed, asked }).toEqual({ failed: true, asked: [] });
  });

  it.runIf(hasBubblewrap)('is what ffmpeg and ffprobe are here', async () => {
    const { ffmpeg, ffprobe } = await found;
    expect([ffmpeg.reach, ffprobe.reach]).toEqual(['own-files', 'own-files']);
    expect(reaches[0]).toBe('own-files');
  });

  it.runIf(hasBubblewrap)('reads and writes the files it is given, and no others', async () => {
    const given = put('given/clip.txt', 'given ');
    const secret = put('given/secret.txt', 'private words');
    const made = path.join(folder, 'made.txt');
    const steps = [`ls '${folder}/given'`, `cat '${given}' '${secret}'`];
    const writes = [`printf made > '${made}'`, `printf x > '${given}'`, `printf x > '${secret}'`];
    const program = put('program/snoop', ['#!/bin/sh', ...steps, ...writes, ''].join('\n'));
    chmodSync(program, 0o755);
    const tool: Confined = { path: program, reach: 'own-files', mostMemoryBytes: usualMemoryBytes };
    const { stdout, stderr } = await runTool(tool, ['-i', fileAddress(given), '-y', fileAddress(made)], {
      timeoutMs: 20_000,
    });
    expect(stdout).toBe('clip.txt\ngiven ');
    expect(stderr).toMatch(/secret\.txt: No such file.*\n.*clip\.txt: Read-only file system/);
    expect([made, given, secret].map((file) => readFileSync(file, 'utf8'))).toEqual([
      'made',
      'given ',
      'private words',
    ]);
  });

  it.runIf(process.platform === 'linux')('ends with the usual sentence when a clip takes too much memory', async () => {
    const tools = await found;
    // One picture of 6000 × 6000 takes 54 MB.
    const bomb = path.join(folder, 'bomb.mov');
    await ffmpeg('-f', 'lavfi', '-i', 'color=gray:s=6000x6000', '-frames:v', '1', '-c:v', 'mjpeg', bomb);
    const short = { ...tools, ffmpeg: { ...tools.ffmpeg, mostMemoryBytes: 32 * 1024 ** 2 } };
    const poster = path.join(folder, 'poster.jpg');
    const refusal = await makePoster(short, bomb, poster, { atUs: 0 }).catch((error: unknown) => error);
    expect(refusal).toBeInstanceOf(ProblemError);
    expect(String(refusal)).toMatch(/bomb\.mov.*could not be decoded.*\.$/);
    expect(existsSync(poster)).toBe(false);
    await makePoster(tools, bomb, poster, { atUs: 0 });
    expect(existsSync(poster)).toBe(true);
  });
});
