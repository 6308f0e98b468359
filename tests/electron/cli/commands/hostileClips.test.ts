import { execFileSync } from 'node:child_process';
import { copyFile, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import ffmpeg from '@ffmpeg-installer/ffmpeg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linesOf, rootFolder, runProgram } from '../runCommand.ts';

const squat = path.join(rootFolder, 'seeds', 'footage', 'squat-side.mp4');
let folder = '';
let library = '';

beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-clips-'));
  library = path.join(folder, 'library');
  await writeFile(path.join(folder, 'text.mp4'), 'This is a text, not a clip.\n');
  await writeFile(path.join(folder, 'empty.mp4'), '');
  const whole = await readFile(squat);
  await writeFile(path.join(folder, 'cut.mp4'), whole.subarray(0, Math.floor(whole.length / 2)));
  execFileSync(ffmpeg.path, [
    ...['-v', 'error', '-f', 'lavfi', '-i', 'sine=frequency=440:duration=1'],
    ...['-c:a', 'aac', path.join(folder, 'sound.m4a')],
  ]);
  expect((await runProgram(['library', 'init', '--library', library])).code).toBe(0);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('a clip that is none', () => {
  const bad = ['missing.mp4', 'text.mp4', 'empty.mp4', 'cut.mp4', 'sound.m4a', '../nowhere/clip.mp4'];

  it.each(bad)('probe says in one sentence what is wrong with %s', async (name) => {
    const { code, stdout, stderr } = await runProgram(['probe', name], folder);
    expect([code, stdout]).toEqual([1, '']);
    expect(linesOf(stderr)).toHaveLength(1);
    expect(stderr).not.toMatch(/\bat .*:\d+:\d+|Error:/);
  });

  it('leaves the library sound and empty of it', async () => {
    const names = ['missing.mp4', 'text.mp4', 'empty.mp4', 'cut.mp4', 'sound.m4a'];
    for (const name of names) {
      const args = ['library', 'import', name, '--library', library, '--exercise', 'back-squat'];
      const { code } = await runProgram([...args, '--trainee', 'Alva Brook', '--date', '2026-03-01'], folder);
      expect(code).toBe(1);
    }
    const { stdout } = await runProgram(['library', 'verify', '--library', library, '--json']);
    expect(JSON.parse(stdout)).toMatchObject({ sound: true, clips: 0 });
  });
});

describe('a clip with an awkward name', () => {
  const names = ['two words.mp4', `it's "quoted".mp4`, 'lift 🏋 ünïcode.mp4', '-dash.mp4', '%s%n;rm -rf.mp4'];

  it.each(names)('probe reads %s', async (name) => {
    await copyFile(squat, path.join(folder, name));
    const { code, stdout, stderr } = await runProgram(['probe', '--json', '--', name], folder);
    expect([code, stderr]).toEqual([0, '']);
    expect(JSON.parse(stdout)).toMatchObject({ frames: 423, rotationDeg: 0 });
  });

  it('probe reads a path with two dots in it', async () => {
    await mkdir(path.join(folder, 'inner'), { recursive: true });
    await copyFile(squat, path.join(folder, 'up.mp4'));
    const { code } = await runProgram(['probe', path.join('inner', '..', 'up.mp4')], folder);
    expect(code).toBe(0);
  });
});
