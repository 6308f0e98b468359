import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { withDemoFolder } from '../../../../electron/cli/write/demoFolder.ts';
import { withStagingFolder } from '../../../../electron/cli/write/folders.ts';

let root = '';
let parent = '';
let folder = '';
beforeAll(async () => {
  root = await mkdtemp(path.join(os.tmpdir(), 'rackside-folders-'));
});
beforeEach(async () => {
  parent = await mkdtemp(path.join(root, 'case-'));
  folder = path.join(parent, 'new', 'out');
});
afterAll(() => rm(root, { recursive: true, force: true }));

const writers = [
  ['withStagingFolder', withStagingFolder],
  ['withDemoFolder', withDemoFolder],
] as const;

/** Writes a few files, then is cancelled. */
async function cancelled(staging: string): Promise<never> {
  await mkdir(path.join(staging, 'clips'));
  await writeFile(path.join(staging, 'clips', 'set.mp4'), 'half');
  throw new Error('cancelled');
}

describe.each(writers)('%s', (_name, withFolder) => {
  it('puts what was written in its place', async () => {
    await withFolder(folder, (staging) => writeFile(path.join(staging, 'letter.md'), 'Dear Alva'));
    expect(await readFile(path.join(folder, 'letter.md'), 'utf8')).toBe('Dear Alva');
    expect((await readdir(folder)).filter((name) => name.startsWith('.unfinished'))).toEqual([]);
  });

  it('takes the folders it made back when the work is cancelled', async () => {
    await expect(withFolder(folder, cancelled)).rejects.toThrow('cancelled');
    expect(await readdir(parent)).toEqual([]);
  });

  it('leaves what somebody else put into a folder that it made', async () => {
    const work = withFolder(folder, async (staging) => {
      await writeFile(path.join(folder, 'thesis.txt'), 'mine');
      return cancelled(staging);
    });
    await expect(work).rejects.toThrow('cancelled');
    expect(await readdir(folder)).toEqual(['thesis.txt']);
  });
});

describe('withStagingFolder', () => {
  it('adds to a folder that is there, inner folders included', async () => {
    await mkdir(path.join(folder, 'clips'), { recursive: true });
    await writeFile(path.join(folder, 'clips', 'mine.mp4'), 'mine');
    await withStagingFolder(folder, async (staging) => {
      await mkdir(path.join(staging, 'clips'));
      await writeFile(path.join(staging, 'clips', 'set.mp4'), 'whole');
    });
    expect((await readdir(path.join(folder, 'clips'))).sort()).toEqual(['mine.mp4', 'set.mp4']);
  });
});

describe('withDemoFolder', () => {
  it('replaces an earlier demo but never what somebody else put there under a name of the demo', async () => {
    await withDemoFolder(folder, (staging) => writeFile(path.join(staging, 'letter.md'), 'first'));
    await writeFile(path.join(folder, 'sheet.csv'), 'mine');
    await withDemoFolder(folder, (staging) => writeFile(path.join(staging, 'letter.md'), 'second'));
    expect(await readFile(path.join(folder, 'letter.md'), 'utf8')).toBe('second');
    const third = withDemoFolder(folder, (staging) => writeFile(path.join(staging, 'sheet.csv'), 'demo'));
    await expect(third).rejects.toThrow('holds other things');
    expect(await readFile(path.join(folder, 'sheet.csv'), 'utf8')).toBe('mine');
    expect(await readFile(path.join(folder, 'letter.md'), 'utf8')).toBe('second');
  });
});
