import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { rootFolder } from '../../../electron/launch/folders.ts';
import { loadedPackages } from '../../../electron/packaging/loadedPackages.ts';

const linux = { platform: 'linux', architecture: 'x64' } as const;

function checkout(packages: Readonly<Record<string, object>>): string {
  const root = mkdtempSync(path.join(os.tmpdir(), 'rackside-packages-'));
  for (const [place, description] of Object.entries(packages)) {
    mkdirSync(path.join(root, place), { recursive: true });
    writeFileSync(path.join(root, place, 'package.json'), JSON.stringify(description));
  }
  return root;
}

const places = (root: string): readonly string[] => loadedPackages(root, linux).map(({ place }) => place);

test('packages are followed to those they need, to the copy that Node would load', () => {
  const root = checkout({
    '.': { name: 'root', dependencies: { a: '1' }, devDependencies: { tool: '1' } },
    'node_modules/a': { name: 'a', dependencies: { b: '1' } },
    'node_modules/a/node_modules/b': { name: 'b', dependencies: { c: '1' } },
    'node_modules/b': { name: 'b' },
    'node_modules/c': { name: 'c' },
    'node_modules/tool': { name: 'tool' },
  });
  expect(places(root)).toEqual(['a', 'a/node_modules/b', 'c']);
});

test('packages of other machines stay behind, and one that may be missing is not missed', () => {
  const root = checkout({
    '.': { name: 'root', dependencies: { a: '1' } },
    'node_modules/a': { name: 'a', optionalDependencies: { glibc: '1', musl: '1', mac: '1', gone: '1' } },
    'node_modules/glibc': { name: 'glibc', os: ['linux'], cpu: ['x64'], libc: ['glibc'] },
    'node_modules/musl': { name: 'musl', os: ['linux'], cpu: ['x64'], libc: ['musl'] },
    'node_modules/mac': { name: 'mac', os: ['darwin'] },
  });
  expect(places(root)).toEqual(['a', 'glibc']);
});

test('a package that is needed and not installed is named', () => {
  const root = checkout({
    '.': { name: 'root', dependencies: { a: '1' } },
    'node_modules/a': { name: 'a', dependencies: { gone: '1' } },
  });
  expect(() => places(root)).toThrow('a needs gone, which is not installed');
});

test("Rackside's own: the library's database goes along; the runtime, tools and updaters do not", () => {
  const names = loadedPackages(rootFolder, linux).map(({ name }) => name);
  expect(names).toContain('better-sqlite3');
  expect(
    names.filter((name) => /^(electron|vite|typescript|react)$|updater|global-agent|^@types\//.test(name)),
  ).toEqual([]);
});
