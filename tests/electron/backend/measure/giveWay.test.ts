import { execFile } from 'node:child_process';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { appFolder } from '../workbench.ts';

const run = promisify(execFile);

/** Nice value and scheduling policy of a thread that gave way, and of a program it started; see proc(5), fields 19 and 41. */
async function priorities(
  how: 'lowerPriority' | 'takeIdleTimeOnly',
): Promise<readonly { readonly nice: number; readonly policy: number }[]> {
  const module = pathToFileURL(path.join(appFolder, 'electron/backend/measure/giveWay.ts')).href;
  const script = `
    import { execFileSync } from 'node:child_process';
    import { readFileSync } from 'node:fs';
    import { ${how} } from '${module}';
    await ${how}();
    console.log(readFileSync('/proc/thread-self/stat', 'utf8') + execFileSync('cat', ['/proc/self/stat'], { encoding: 'utf8' }));
  `;
  const { stdout } = await run(process.execPath, ['--input-type=module', '--eval', script]);
  return stdout
    .trim()
    .split(/\n+/)
    .map((line) => line.slice(line.lastIndexOf(')') + 2).split(' '))
    .map((fields) => ({ nice: Number(fields[19 - 3]), policy: Number(fields[41 - 3]) }));
}

const idlePolicy = 5;
const normalPolicy = 0;

describe.runIf(process.platform === 'linux')('the priority of measuring', () => {
  it('beside a window is that of work for idle moments, for those who look for joints', async () => {
    for (const { policy } of await priorities('takeIdleTimeOnly')) expect(policy).toBe(idlePolicy);
  });

  it('is below the normal in any case, for the programs it starts as well', async () => {
    for (const { nice, policy } of await priorities('lowerPriority')) {
      expect(policy).toBe(normalPolicy);
      expect(nice).toBe(10);
    }
  });
});
