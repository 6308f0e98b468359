import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { buildCatalogue, type Catalogue } from '../../../engine/exercises/index.ts';
import { ProblemError } from '../../contract/reply.ts';

const loaded = new Map<string, Catalogue>();

const readJson = (file: string): unknown => JSON.parse(readFileSync(file, 'utf8'));

const jsonFilesIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort();

const load = (appFolder: string): Catalogue => {
  const seeds = path.join(appFolder, 'seeds');
  const read = (...parts: string[]): unknown => {
    const name = parts.join('/');
    try {
      return readJson(path.join(seeds, ...parts));
    } catch (cause) {
      throw new Error(`${name}: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
    }
  };
  const cautions = jsonFilesIn(path.join(seeds, 'cautions')).flatMap((name) => read('cautions', name));
  const exerciseFiles = jsonFilesIn(path.join(seeds, 'exercises')).map((name) => ({
    name: `exercises/${name}`,
    content: read('exercises', name),
  }));
  return buildCatalogue({ rubric: read('rubric', 'v1.json'), exerciseFiles, cautions });
};

/**
 * The judging data that ships with the app, read once per folder: rubric, exercises and cautions of
 * `appFolder/seeds`. Throws a ProblemError (`internal`) naming the file and the place where it is wrong.
 */
export const loadCatalogue = (appFolder: string): Catalogue => {
  const folder = path.resolve(appFolder);
  const known = loaded.get(folder);
  if (known !== undefined) return known;
  try {
    const catalogue = load(folder);
    loaded.set(folder, catalogue);
    return catalogue;
  } catch (cause) {
    const place = cause instanceof Error ? cause.message : String(cause);
    throw new ProblemError(
      'internal',
      `The exercise library that ships with Rackside can't be read (${place}); your own library is unharmed; install Rackside again or mend that file.`,
      { cause },
    );
  }
};
