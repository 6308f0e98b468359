import path from 'node:path';
import { expect, test } from 'vitest';
import { backendPlace } from '../../../../electron/main/backend/backendPlace.ts';

test('in a package the backend lies beside the archive, and runs on the Node that lies with it', () => {
  const place = backendPlace('/usr/lib/rackside/resources/app.asar', 'linux', { RACKSIDE_NODE: '/tmp/other' });
  expect(place).toEqual({
    appFolder: '/usr/lib/rackside/resources/backend',
    bundle: '/usr/lib/rackside/resources/backend/dist/backend.mjs',
    node: '/usr/lib/rackside/resources/backend/node',
  });
  expect(path.basename(backendPlace('/r/app.asar', 'win32', {}).node)).toBe('node.exe');
});

test('in a checkout it lies in the checkout, and runs on the Node that the start names, else on the installed one', () => {
  expect(backendPlace('/home/me/rackside', 'linux', { RACKSIDE_NODE: '/opt/node' }).node).toBe('/opt/node');
  expect(backendPlace('/home/me/rackside', 'linux', {})).toEqual({
    appFolder: '/home/me/rackside',
    bundle: '/home/me/rackside/dist/backend.mjs',
    node: '/home/me/rackside/node_modules/.bin/node',
  });
});

test('a folder whose name holds the archive ending is no package', () => {
  expect(backendPlace('/home/me/app.asar.copy', 'linux', {}).appFolder).toBe('/home/me/app.asar.copy');
});
