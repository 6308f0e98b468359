import { createHash } from 'node:crypto';
import { readdir, readFile, stat } from 'node:fs/promises';
import path from 'node:path';

/**
 * A hash over the names and contents of files and folders, the same on every machine: what a build was made from.
 * A missing input counts as empty, so that its appearance changes the hash.
 *
 * @param root folder the inputs are relative to
 * @param inputs files or folders, folders taken whole
 */
export async function inputHash(root: string, inputs: readonly string[]): Promise<string> {
  const files = (await Promise.all(inputs.map((input) => filesUnder(path.join(root, input))))).flat();
  const hash = createHash('sha256');
  for (const file of files.sort()) {
    const content = await readFile(file);
    hash.update(`${path.relative(root, file).replaceAll(path.sep, '/')}\n${content.length}\n`);
    hash.update(content);
  }
  return hash.digest('hex');
}

async function filesUnder(input: string): Promise<readonly string[]> {
  const found = await stat(input).catch(() => null);
  if (found === null) return [];
  if (found.isFile()) return [input];
  const entries = await readdir(input, { recursive: true, withFileTypes: true });
  return entries.filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
}
