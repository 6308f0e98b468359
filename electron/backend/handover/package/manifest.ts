import { readdir, stat } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { nameModes } from '../../../../engine/names/shownName.ts';
import { undeliveredSchema } from '../../../contract/handover.ts';
import { hashFile } from '../../files/hashing.ts';

export const manifestName = 'manifest.json';
export const reviewName = 'review.json';

const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const words = v.pipe(v.string(), v.maxLength(1000));

/** Whether a file of a handover is footage: large, and made again of what the desk keeps. */
export const isFootage = (name: string): boolean => /^(?:clips|originals)\/.*\.mp4$/.test(name);

/** A name within a folder: parts of it joined by `/`, none of them leading out. */
export const innerName = v.pipe(
  v.string(),
  v.maxLength(400),
  v.regex(/^[^/\\:\p{Cc}]+(?:\/[^/\\:\p{Cc}]+)*$/u),
  v.check((name) => name.split('/').every((part) => part !== '.' && part !== '..')),
);

/** What a handover holds, to be checked by whoever gets it. */
export const manifestSchema = v.strictObject({
  format: v.literal('rackside-handover'),
  version: v.literal(1),
  /** Which handover of its session it is: a correction is the next. */
  handover: v.pipe(count, v.minValue(1)),
  handedAt: v.pipe(v.string(), v.maxLength(40)),
  /** Day of the session. */
  date: v.pipe(v.string(), v.maxLength(40)),
  rubric: v.strictObject({ id: words, version: count }),
  language: v.pipe(v.string(), v.maxLength(40)),
  names: v.picklist(nameModes),
  /** What is missing, and why. */
  failed: v.pipe(v.array(undeliveredSchema), v.maxLength(10_000)),
  files: v.pipe(
    v.array(v.strictObject({ name: innerName, bytes: count, sha256: v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/)) })),
    v.maxLength(10_000),
  ),
});
export type Manifest = v.InferOutput<typeof manifestSchema>;

/** Every file of a folder with its length and SHA-256, by name; the manifest itself is left out. */
export async function listFiles(folder: string): Promise<Manifest['files']> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const names = entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
    .filter((name) => name !== manifestName)
    .sort();
  const files: Manifest['files'] = [];
  for (const name of names) {
    const file = path.join(folder, name);
    files.push({ name, bytes: (await stat(file)).size, sha256: await hashFile(file) });
  }
  return files;
}
