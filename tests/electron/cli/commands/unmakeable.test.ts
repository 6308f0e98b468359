import { expect, it } from 'vitest';
import { linesOf, run } from '../runCommand.ts';

// Below a file, and below a folder of the kernel's that takes no new names: no folder can be made there.
it.each([
  ['demo', ['demo', '--out', '/dev/null/x']],
  ['library init', ['library', 'init', '--library', '/dev/null/x']],
  ['demo, in the kernel’s folder', ['demo', '--out', '/proc/nope/x']],
  ['library init, in the kernel’s folder', ['library', 'init', '--library', '/proc/nope/x']],
])('%s gives up with one line where no folder can be made', async (_name, args) => {
  const { code, stdout, stderr } = await run(args);
  expect([code, stdout]).toEqual([1, '']);
  expect(linesOf(stderr)).toHaveLength(1);
  expect(stderr).not.toMatch(/inside Rackside|ENO/);
});
