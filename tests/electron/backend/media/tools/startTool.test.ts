import { expect, it } from 'vitest';
import { runTool } from '../../../../../electron/backend/media/tools/startTool.ts';

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
