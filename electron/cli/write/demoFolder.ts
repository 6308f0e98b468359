import { randomUUID } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { ProblemError } from '../../contract/reply.ts';
import { oneLine } from '../run/outcome.ts';
import { withFolder } from './folders.ts';

/** The file that lists the demo's own files, so that a later demo replaces exactly those. */
const markName = '.rackside-demo.json';

const markSchema = v.object({
  format: v.literal('rackside-demo'),
  entries: v.array(v.pipe(v.string(), v.regex(/^(\.unfinished-)?[A-Za-z0-9][A-Za-z0-9._-]*$/))),
});

/**
 * Makes the demo folder: `fill` writes into a folder of its own, whose content then takes the place of an earlier demo's.
 * Nothing else in the folder is touched. Throws `conflict` when other things are in the way; whenever it throws, only
 * what was made here is removed.
 */
export async function withDemoFolder<T>(folder: string, fill: (staging: string) => Promise<T>): Promise<T> {
  const there = await stat(folder).catch(() => null);
  if (there !== null && !there.isDirectory()) throw occupied(folder, 'is a file');
  return withFolder(folder, () => replaceDemo(folder, fill));
}

async function replaceDemo<T>(folder: string, fill: (staging: string) => Promise<T>): Promise<T> {
  const earlier = await earlierDemo(folder);
  const stagingName = `.unfinished-${randomUUID()}`;
  const staging = path.join(folder, stagingName);
  // The mark comes first, so that a demo that is killed can still be replaced by the next.
  await mark(folder, [...earlier, stagingName]);
  await mkdir(staging);
  try {
    const result = await fill(staging);
    const entries = (await readdir(staging)).sort();
    await refuseOthers(folder, entries, earlier);
    await mark(folder, [...earlier, ...entries, stagingName]);
    for (const name of new Set([...earlier, ...entries])) await remove(path.join(folder, name));
    for (const name of entries) await rename(path.join(staging, name), path.join(folder, name));
    await remove(staging);
    await mark(folder, entries);
    return result;
  } catch (error) {
    await remove(staging);
    if (earlier.length > 0) await mark(folder, earlier);
    else await remove(path.join(folder, markName));
    throw error;
  }
}

function mark(folder: string, entries: readonly string[]): Promise<void> {
  return writeFile(path.join(folder, markName), `${JSON.stringify({ format: 'rackside-demo', entries }, null, 2)}\n`);
}

function remove(target: string): Promise<void> {
  return rm(target, { recursive: true, force: true });
}

/** The names that an earlier demo left in the folder. Throws `conflict` when it holds anything but a demo. */
async function earlierDemo(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder);
  if (names.length === 0) return [];
  const found = await readFile(path.join(folder, markName), 'utf8').then(parseMark, () => null);
  if (found !== null) return found.entries;
  throw occupied(folder, 'holds other things');
}

/** Throws `conflict` when something that no earlier demo left there has one of the demo's names. */
async function refuseOthers(folder: string, entries: readonly string[], earlier: readonly string[]): Promise<void> {
  const there = new Set(await readdir(folder));
  if (entries.some((name) => there.has(name) && !earlier.includes(name))) throw occupied(folder, 'holds other things');
}

function occupied(folder: string, how: string): ProblemError {
  const name = oneLine(path.basename(folder));
  return ProblemError.inWords(
    'conflict',
    `"${name}" ${how}, so no demo was written there; choose an empty or a new folder.`,
  );
}

function parseMark(text: string): v.InferOutput<typeof markSchema> | null {
  try {
    const parsed = v.safeParse(markSchema, JSON.parse(text));
    return parsed.success ? parsed.output : null;
  } catch {
    return null;
  }
}
