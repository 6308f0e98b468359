import { expect, test } from 'vitest';
import { runWindow, startTrouble } from '../../../electron/launch/windowStart.ts';

/** Runs a small program in the runtime's place. */
const runs = (program: string, limitMs = 20_000) =>
  runWindow({ executable: process.execPath, args: ['-e', program], environment: process.env, limitMs });

const log = '/profile/rackside-window.log';
const mark = "require('node:fs').writeFileSync(process.env.RACKSIDE_STARTED, '');";

test('a program that runs is waited for, however it ends', async () => {
  expect(await runs(`${mark} process.exit(3)`)).toEqual({ code: 3, signal: null, how: 'ran' });
  expect(startTrouble(await runs(mark), log)).toBeNull();
});

test('one that never comes to run is ended, and told of with the place of the log', async () => {
  const end = await runs('setInterval(() => {}, 1000)', 300);
  expect(end).toMatchObject({ signal: 'SIGKILL', how: 'late' });
  expect(startTrouble(end, log)).toMatch(
    /did not come within 90 seconds .* nothing was changed.*rackside-window\.log$/,
  );
});

test.each([
  ['process.exit(127)', 'code 127'],
  ["process.kill(process.pid, 'SIGSEGV')", 'SIGSEGV'],
])('one that ends before it runs (%s) is told of too', async (program, how) => {
  const sentence = startTrouble(await runs(program), log) ?? '';
  expect(sentence).toContain(`(${how})`);
  expect(sentence).toContain(log);
});

test('a start beside a window that is open says nothing of its own', async () => {
  expect(startTrouble(await runs(''), log)).toBeNull();
});
