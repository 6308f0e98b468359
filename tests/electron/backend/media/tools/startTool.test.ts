import { spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { describe, expect, it, vi } from 'vitest';
import { runTool, startTool } from '../../../../../electron/backend/media/tools/startTool.ts';

const program = { path: process.execPath, reach: 'everything', mostMemoryBytes: 4 * 1024 ** 3 } as const;
const node = (script: string) => [program, ['-e', script]] as const;

it('lets a program run for longer than the silence it may keep, as long as it says something', async () => {
  const [tool, args] = node('let n = 0; setInterval(() => { console.log(n); if (++n === 8) process.exit(); }, 400)');
  expect((await runTool(tool, args, { idleMs: 2_500 })).stdout).toBe('0\n1\n2\n3\n4\n5\n6\n7\n');
});

it('ends a program that says nothing more', async () => {
  const [tool, args] = node('console.log(1); setInterval(() => undefined, 1000)');
  expect(await runTool(tool, args, { idleMs: 1_500 })).toMatchObject({ failed: true, stdout: '1\n' });
});

describe.skipIf(process.platform === 'win32')('a program whose helper outlives it', () => {
  const helper = "require('child_process').spawn('sleep', ['600'], { stdio: ['ignore', 'inherit', 'inherit'] })";

  it('is over when it ends by itself, and the helper with it', async () => {
    const [tool, args] = node(`console.log(${helper}.pid); process.exit()`);
    const { failed, stdout } = await runTool(tool, args, {});
    expect(failed).toBe(false);
    await vi.waitFor(() => expect(isAlive(Number(stdout))).toBe(false));
  });

  it('is over when it is cancelled, and the helper with it', async () => {
    const abort = new AbortController();
    const [tool, args] = node(`console.log(${helper}.pid); setInterval(() => undefined, 1000)`);
    const { stdout, ended } = await startTool(tool, args, abort.signal);
    const said = String(await once(stdout, 'data'));
    abort.abort();
    expect((await ended).failed).toBe(true);
    await vi.waitFor(() => expect(isAlive(Number(said))).toBe(false));
  });
});

/** Whether a process runs: one that has ended and waits to be taken note of does not. */
function isAlive(pid: number): boolean {
  const { status, stdout } = spawnSync('ps', ['-o', 'stat=', '-p', String(pid)], { encoding: 'utf8' });
  return status === 0 && !stdout.trim().startsWith('Z');
}
