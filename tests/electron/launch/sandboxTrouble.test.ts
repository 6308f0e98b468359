import { expect, test } from 'vitest';
import { sandboxTrouble } from '../../../electron/launch/sandboxTrouble.ts';

const machine = { platform: 'linux', userId: 1000, environment: {} };

test('a runtime that traps on Linux gets one sentence with the way out for its own helper', () => {
  const sentence = sandboxTrouble(machine, '/cache/runtime/electron', 'SIGTRAP');
  expect(sentence).toContain('sudo chown root:root "/cache/runtime/chrome-sandbox"');
  expect(sentence).toContain('nothing was changed');
});

test.each([
  ['an ordinary end', machine, null],
  ['a person who interrupts', machine, 'SIGINT'],
  ['a system without that helper', { ...machine, platform: 'darwin' }, 'SIGTRAP'],
  ['the root user, who has no sandbox', { ...machine, userId: 0 }, 'SIGTRAP'],
])('%s gets none', (_what, where, signal) => {
  expect(sandboxTrouble(where, '/cache/runtime/electron', signal)).toBeNull();
});
