import { readFileSync } from 'node:fs';
import { rename, writeFile } from 'node:fs/promises';
import * as v from 'valibot';

const keptSchema = v.object({ open: v.nullable(v.string()), recent: v.array(v.string()) });

/** Which library is opened at a start, null = the usual one, and which were opened before, the latest first. */
export type KeptLibraries = v.InferOutput<typeof keptSchema>;

const most = 8;

/** What is kept of libraries; nothing where the file is missing or can't be read. */
export function readLibraries(file: string): KeptLibraries {
  try {
    return v.parse(keptSchema, JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return { open: null, recent: [] };
  }
}

/** What is to be kept once a library is opened; `usual` = the one that is opened where nobody chose. */
export function afterOpening(kept: KeptLibraries, folder: string, usual: string): KeptLibraries {
  const recent = [folder, ...kept.recent.filter((one) => one !== folder)].slice(0, most);
  return { open: folder === usual ? null : folder, recent };
}

/** Keeps it for the next start; only its owner may read which libraries there are. The system is not told. */
export async function keepLibraries(file: string, kept: KeptLibraries): Promise<void> {
  await writeFile(`${file}.new`, `${JSON.stringify(kept)}\n`, { mode: 0o600 });
  await rename(`${file}.new`, file);
}
