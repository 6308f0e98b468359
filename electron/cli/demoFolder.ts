import { randomUUID } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { ProblemError } from '../contract/reply.ts';
import { oneLine } from './outcome.ts';

/** Names the demo's own files, so that a later demo replaces exactly those. */
const markName = '.rackside-demo.json';

const markSchema = v.object({
  format: v.literal('rackside-demo'),
  entries: v.array(v.pipe(v.string(), v.regex(/^[A-Za-z0-9][A-Za-z0-9._-]*$/))),
});

/**
 * Makes the demo folder: `fill` writes into a folder of its own, whose content then takes the place of an earlier
 * demo's. When it throws, the folder is as it was before. Throws `conflict` when the folder holds other things.
 */
export async function withDemoFolder<T>(folder: string, fill: (staging: string) => Promise<T>): Promise<T> {
  const made = await mkdir(folder, { recursive: true });
  const earlier = await earlierDemo(folder);
  const staging = path.join(folder, `.unfinished-${randomUUID()}`);
  await mkdir(staging);
  try {
    const result = await fill(staging);
    const entries = (await readdir(staging)).sort();
    for (const name of new Set([...earlier, ...entries])) {
      await rm(path.join(folder, name), { recursive: true, force: true });
    }
    for (const name of entries) await rename(path.join(staging, name), path.join(folder, name));
    await writeFile(path.join(folder, markName), `${JSON.stringify({ format: 'rackside-demo', entries }, null, 2)}\n`);
    return result;
  } catch (error) {
    await rm(staging, { recursive: true, force: true });
    if (made !== undefined) await rm(made, { recursive: true, force: true });
    throw error;
  } finally {
    await rmdir(staging).catch(() => undefined);
  }
}

/** The names an earlier demo left in the folder. */
async function earlierDemo(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder);
  if (names.length === 0) return [];
  const mark = await readFile(path.join(folder, markName), 'utf8').then(parseMark, () => null);
  if (mark !== null) return mark.entries;
  throw new ProblemError(
    'conflict',
    `The folder "${oneLine(path.basename(folder))}" holds other things, so no demo was written there; choose an empty or a new one.`,
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
