import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { ffmpeg } from '../../media/clips.ts';
import { squatFile, temporaryFolder } from '../../workbench.ts';

const run = promisify(execFile);

it('ends whenever it is stopped, without taking the process along, and opens no network socket', async () => {
  const clip = path.join(temporaryFolder(), 'short.mp4');
  await ffmpeg('-i', squatFile, '-frames:v', '16', '-c:v', 'libx264', '-an', clip);
  const script = path.join(import.meta.dirname, '../../faults/lookUntil.ts');
  for (const share of [0, 0.3, 0.7, 2]) {
    // Rejects when the process ends by anything but itself.
    const { stdout } = await run(process.execPath, [script, clip, String(share)]);
    expect(stdout).toBe('');
  }
});
