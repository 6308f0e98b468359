import { readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';

/** Beside the packaged program's description. */
export const buildFactsFile = 'build.json';

const buildFactsSchema = v.object({ commit: v.string(), date: v.string() });

/** What a package was made from: a commit, and its day (YYYY-MM-DD). */
export type BuildFacts = v.InferOutput<typeof buildFactsSchema>;

/** What the running program was made from; null in a checkout. */
export function readBuildFacts(appFolder: string): BuildFacts | null {
  try {
    return v.parse(buildFactsSchema, JSON.parse(readFileSync(path.join(appFolder, buildFactsFile), 'utf8')));
  } catch {
    return null;
  }
}
