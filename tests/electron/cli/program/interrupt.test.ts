import { spawn } from 'node:child_process';
import { watch } from 'node:fs';
import { mkdir, mkdtemp, readdir, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ffmpeg } from '../../backend/media/clips.ts';
import { rootFolder, run } from '../runCommand.ts';

let folder = '';
let clip = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-interrupt-'));
  clip = path.join(folder, 'long.mp4');
  const picture = ['-f', 'lavfi', '-i', 'testsrc=s=640x360:r=30:d=20'];
  await ffmpeg(...picture, '-c:v', 'mpeg4', clip);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Starts a command, sends it what Ctrl-C sends as soon as anything appears in `watched`, and gives how it ended. */
async function interruptOnceIn(
  watched: string,
  args: readonly string[],
): Promise<{ code: number | null; stderr: string }> {
  const guard = path.join(rootFolder, 'electron', 'launch', 'guard.mjs');
  const child = spawn(process.execPath, [guard, '../cli/main.ts', ...args], { stdio: ['ignore', 'ignore', 'pipe'] });
  let stderr = '';
  child.stderr.on('data', (piece: Buffer) => {
    stderr += piece.toString();
  });
  // Once: a second Ctrl-C ends the program at once, without tidying up.
  const watcher = watch(watched, () => {
    watcher.close();
    child.kill('SIGINT');
  });
  const code = await new Promise<number | null>((resolve) => child.on('close', resolve));
  return { code, stderr };
}

describe('Ctrl-C', () => {
  it('takes the demo back, whole', async () => {
    const parent = path.join(folder, 'demos');
    const out = path.join(parent, 'out');
    await mkdir(parent);
    expect(await interruptOnceIn(parent, ['demo', '--out', out])).toEqual({ code: 130, stderr: '' });
    expect(await readdir(parent)).toEqual([]);
  });

  it('takes an import back: no clip, no half file, nothing left in line', async () => {
    const library = path.join(folder, 'library');
    expect((await run(['library', 'init', '--library', library])).code).toBe(0);
    const args = [
      'library',
      'import',
      clip,
      '--library',
      library,
      '--trainee',
      'Alva Brook',
      '--exercise',
      'back-squat',
    ];
    expect(await interruptOnceIn(path.join(library, 'clips'), args)).toEqual({ code: 130, stderr: '' });

    const { stdout } = await run(['library', 'verify', '--library', library, '--json']);
    expect(JSON.parse(stdout)).toMatchObject({ sound: true, clips: 0 });
    expect(JSON.parse(stdout)).toMatchObject({ sessions: 0 });
    const listed = await run(['library', 'list', '--library', library, '--json']);
    expect(JSON.parse(listed.stdout)).toEqual({ sessions: [], trainees: [] });
    for (const kept of ['clips', 'pictures']) expect(await readdir(path.join(library, kept))).toEqual([]);
  });
});
