import { spawn } from 'node:child_process';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { standingFolder } from '../../../electron/cli/run/host.ts';
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

describe('a relative name', () => {
  // npm sets INIT_CWD to where the person stood and runs scripts in the package's folder (npm's own documentation).
  it('starts where the person stood when npm runs the command', () => {
    expect(standingFolder({ npm_lifecycle_event: 'rackside', INIT_CWD: '/clips' }, '/app')).toBe('/clips');
    expect(standingFolder({ npm_lifecycle_event: 'demo', INIT_CWD: '/clips' }, '/app')).toBe('/clips');
  });

  it('starts in the working folder when something else does', () => {
    expect(standingFolder({ npm_lifecycle_event: 'test', INIT_CWD: '/clips' }, '/app')).toBe('/app');
    expect(standingFolder({}, '/app')).toBe('/app');
  });
});
