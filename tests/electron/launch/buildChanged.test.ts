import { mkdir, mkdtemp, rename, rm, utimes, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { inputHash } from '../../../electron/launch/buildChanged.ts';

let root = '';
const inputs = ['page', 'settings.json', 'missing'];
beforeEach(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'rackside-'));
  await mkdir(path.join(root, 'page', 'inner'), { recursive: true });
  await writeFile(path.join(root, 'page', 'a.ts'), 'one');
  await writeFile(path.join(root, 'page', 'inner', 'b.ts'), 'two');
  await writeFile(path.join(root, 'settings.json'), '{}');
});
afterEach(() => rm(root, { recursive: true }));

const hash = () => inputHash(root, inputs);

test('the same contents give the same hash, whenever they were written', async () => {
  const before = await hash();
  await utimes(path.join(root, 'page', 'a.ts'), 1, 1);
  await writeFile(path.join(root, 'settings.json'), '{}');
  await writeFile(path.join(root, 'beside.ts'), 'not an input');
  expect(await hash()).toBe(before);
});

test.each([
  ['a changed file', () => writeFile(path.join(root, 'page', 'inner', 'b.ts'), 'owt')],
  ['a new file', () => writeFile(path.join(root, 'page', 'c.ts'), '')],
  ['a removed file', () => rm(path.join(root, 'page', 'a.ts'))],
  ['a renamed file', () => rename(path.join(root, 'page', 'a.ts'), path.join(root, 'page', 'z.ts'))],
  ['a missing input that appears', () => writeFile(path.join(root, 'missing'), '')],
])('%s changes the hash', async (_what, change) => {
  const before = await hash();
  await change();
  expect(await hash()).not.toBe(before);
});

test('contents that only move between files change the hash', async () => {
  const before = await hash();
  await writeFile(path.join(root, 'page', 'a.ts'), 'onet');
  await writeFile(path.join(root, 'page', 'inner', 'b.ts'), 'wo');
  expect(await hash()).not.toBe(before);
});
