import { expect, test, vi } from 'vitest';
import { chooseRuntime, type RuntimeSources } from '../../../electron/launch/runtime.ts';

function sources(changes: Partial<RuntimeSources> = {}) {
  return {
    overridden: vi.fn(async () => null),
    installed: vi.fn(async () => null),
    download: vi.fn(async () => null),
    fallback: vi.fn(async () => '/cache/electron'),
    platform: 'linux',
    architecture: 'x64',
    ...changes,
  };
}

test('a runtime that a person named comes first and nothing is fetched', async () => {
  const all = sources({ overridden: async () => '/named/electron', installed: async () => '/own/electron' });
  expect(await chooseRuntime(all)).toEqual({ executable: '/named/electron', kind: 'own' });
  expect(all.download).not.toHaveBeenCalled();
  expect(all.fallback).not.toHaveBeenCalled();
});

test("Electron's own binary is used when it is there, without asking the network", async () => {
  const all = sources({ installed: async () => '/own/electron' });
  expect(await chooseRuntime(all)).toEqual({ executable: '/own/electron', kind: 'own' });
  expect(all.download).not.toHaveBeenCalled();
});

test('it is downloaded when it is not there', async () => {
  const all = sources({ download: async () => '/own/electron' });
  expect(await chooseRuntime(all)).toEqual({ executable: '/own/electron', kind: 'own' });
  expect(all.fallback).not.toHaveBeenCalled();
});

test('where it can not be had, Linux on x64 uses the fallback runtime', async () => {
  expect(await chooseRuntime(sources())).toEqual({ executable: '/cache/electron', kind: 'fallback' });
});

test.each([
  ['linux', 'arm64'],
  ['darwin', 'arm64'],
  ['win32', 'x64'],
])('on %s %s there is none: one sentence that names the way without a window', async (platform, architecture) => {
  const all = sources({ platform, architecture });
  await expect(chooseRuntime(all)).rejects.toThrow(/npm run demo/);
  expect(all.fallback).not.toHaveBeenCalled();
});
