import os from 'node:os';
import { expect, test } from 'vitest';
import {
  hasDisplay,
  profileFolder,
  runtimeArguments,
  runtimeEnvironment,
  sandboxTrouble,
} from '../../../electron/launch/machine.ts';

const machine = { platform: 'linux', userId: 1000, environment: { DISPLAY: ':0' } };

test('the sandbox is switched off for the root user of Linux and nobody else', () => {
  expect(runtimeArguments({ ...machine, userId: 0 })).toEqual(['--no-sandbox']);
  expect(runtimeArguments(machine)).toEqual([]);
  expect(runtimeArguments({ ...machine, platform: 'darwin', userId: 0 })).toEqual([]);
  expect(runtimeArguments({ ...machine, platform: 'win32', userId: null })).toEqual([]);
});

test.each([
  [{ DISPLAY: ':0' }, true],
  [{ WAYLAND_DISPLAY: 'wayland-0' }, true],
  [{ DISPLAY: '' }, false],
  [{}, false],
])('on Linux, %j means a display: %s', (environment, there) => {
  expect(hasDisplay({ ...machine, environment })).toBe(there);
});

test('elsewhere there is always a display', () => {
  for (const platform of ['darwin', 'win32']) expect(hasDisplay({ ...machine, platform, environment: {} })).toBe(true);
});

test('the runtime does not become a plain Node by a variable', () => {
  const environment = { ELECTRON_RUN_AS_NODE: '1', NODE_OPTIONS: '--inspect', HOME: '/home/person' };
  const given = runtimeEnvironment({ ...machine, environment });
  expect(given).not.toHaveProperty('ELECTRON_RUN_AS_NODE');
  expect(given).not.toHaveProperty('NODE_OPTIONS');
  expect(given.HOME).toBe('/home/person');
});

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

// Electron's documentation of app.getPath('userData'): the folder of application data with the app's name.
test.each([
  ['linux', {}, `${os.homedir()}/.config/Rackside`],
  ['linux', { XDG_CONFIG_HOME: '/settings' }, '/settings/Rackside'],
  ['darwin', {}, `${os.homedir()}/Library/Application Support/Rackside`],
])('on %s with %j the profile is in %s', (platform, environment, folder) => {
  expect(profileFolder({ ...machine, platform, environment })).toBe(folder);
});
