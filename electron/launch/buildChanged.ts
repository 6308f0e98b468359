import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { build } from 'vite';
import { distFolder, rootFolder } from './folders.ts';
import { parts } from './parts.ts';

const stampSchema = v.record(v.string(), v.string());
const stampFile = path.join(distFolder, 'build.json');

/**
 * Builds every part whose inputs differ from what its files in `dist/` were made from.
 *
 * @returns the names of the parts that were built
 */
export async function buildChanged(): Promise<readonly string[]> {
  await mkdir(distFolder, { recursive: true });
  let stamp = await readStamp();
  const built: string[] = [];
  for (const part of parts) {
    const hash = await inputHash(rootFolder, part.inputs);
    if (stamp[part.name] === hash && existsSync(path.join(distFolder, part.output))) continue;
    process.stderr.write(`Building ${part.name}\n`);
    await build(part.vite());
    stamp = { ...stamp, [part.name]: hash };
    await writeStamp(stamp);
    built.push(part.name);
  }
  return built;
}

async function readStamp(): Promise<v.InferOutput<typeof stampSchema>> {
  const text = await readFile(stampFile, 'utf8').catch(() => '{}');
  try {
    return v.parse(stampSchema, JSON.parse(text));
  } catch {
    return {};
  }
}

async function writeStamp(stamp: v.InferOutput<typeof stampSchema>): Promise<void> {
  await writeFile(`${stampFile}.new`, `${JSON.stringify(stamp, null, 2)}\n`);
  await rename(`${stampFile}.new`, stampFile);
}

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
