import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { keptRuntime, type RuntimeMaking } from '../../../electron/launch/keptRuntime.ts';

async function place() {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const home = path.join(folder, 'runtime-1');
  const library = path.join(home, 'libffmpeg.so');
  const said: string[] = [];
  const make = vi.fn(async (workshop: string) => {
    const made = path.join(workshop, 'made');
    await mkdir(made);
    await writeFile(path.join(made, 'electron'), 'binary');
    await writeFile(path.join(made, 'libffmpeg.so'), 'sound');
    return made;
  });
  const making: RuntimeMaking = {
    isWhole: async () => (await readFile(library, 'utf8').catch(() => '')) === 'sound',
    make,
    say: (sentence) => void said.push(sentence),
    megabytes: 7,
  };
  return { folder, home, library, said, make, making };
}

test('a runtime is made once, and then only looked at', async () => {
  const { home, make, making, folder } = await place();
  expect(await keptRuntime(home, making)).toBe(path.join(home, 'electron'));
  expect(await keptRuntime(home, making)).toBe(path.join(home, 'electron'));
  expect(make).toHaveBeenCalledOnce();
  expect(await readdir(folder)).toEqual(['runtime-1']);
});

test.each(['changed', 'missing'])('one with a file that is %s is made anew, and said to be', async (how) => {
  const { home, library, said, make, making, folder } = await place();
  await keptRuntime(home, making);
  if (how === 'changed') await writeFile(library, 'sounD');
  else await rm(library);
  said.length = 0;
  await keptRuntime(home, making);
  expect(make).toHaveBeenCalledTimes(2);
  expect(await readFile(library, 'utf8')).toBe('sound');
  expect(said.join('\n')).toMatch(/has changed: it is fetched anew/);
  expect(await readdir(folder)).toEqual(['runtime-1']);
});

test('where it can not be fetched, one sentence says that it has changed, and it stays', async () => {
  const { home, library, making } = await place();
  await keptRuntime(home, making);
  await writeFile(library, 'sounD');
  const offline = { ...making, make: () => Promise.reject(new Error('no network')) };
  await expect(keptRuntime(home, offline)).rejects.toThrow(/has changed, and it could not be fetched \(no network\)/);
  expect(await readFile(library, 'utf8')).toBe('sounD');
});
