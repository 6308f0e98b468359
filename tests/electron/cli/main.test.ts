import { spawn } from 'node:child_process';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { rootFolder } from './runCommand.ts';

describe('a reader that goes away', () => {
  it('is no failure', async () => {
    const guard = path.join(rootFolder, 'electron', 'launch', 'guard.mjs');
    const args = [guard, '../cli/main.ts', 'probe', 'seeds/footage/squat-side.mp4', '--json'];
    const child = spawn(process.execPath, args, { cwd: rootFolder, stdio: ['ignore', 'pipe', 'pipe'] });
    child.stdout.destroy();
    let stderr = '';
    child.stderr.on('data', (piece: Buffer) => {
      stderr += piece.toString();
    });
    const code = await new Promise<number | null>((resolve) => child.on('close', resolve));
    expect([code, stderr]).toEqual([0, '']);
  });
});
