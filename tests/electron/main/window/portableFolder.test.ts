import { expect, test } from 'vitest';
import { portableFolder } from '../../../../electron/main/window/portableFolder.ts';

const place = { platform: 'linux', environment: {}, exists: () => true };

test('a folder beside the program takes its data; without one nothing is portable', () => {
  const executable = '/media/stick/Rackside/rackside-desk';
  expect(portableFolder({ ...place, executable })).toBe('/media/stick/Rackside/rackside-portable');
  expect(portableFolder({ ...place, executable, exists: () => false })).toBeNull();
});

test('an AppImage looks beside its own file, a Mac program beside its bundle', () => {
  const environment = { APPIMAGE: '/media/stick/Rackside.AppImage' };
  expect(portableFolder({ ...place, environment, executable: '/tmp/.mount_x/rackside-desk' })).toBe(
    '/media/stick/rackside-portable',
  );
  const executable = '/Volumes/STICK/Rackside.app/Contents/MacOS/Rackside';
  expect(portableFolder({ ...place, platform: 'darwin', executable })).toBe('/Volumes/STICK/rackside-portable');
});
