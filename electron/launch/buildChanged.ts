import { existsSync } from 'node:fs';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { build } from 'vite';
import { distFolder, rootFolder } from './folders.ts';
import { inputHash } from './inputHash.ts';
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
