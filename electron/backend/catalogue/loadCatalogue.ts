import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { buildCatalogue } from '../../../engine/exercises/buildCatalogue.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Rubric } from '../../../engine/rubric/rubric.ts';
import { ProblemError } from '../../contract/reply.ts';
import { appVersion } from './appVersion.ts';

const loaded = new Map<string, Catalogue>();

const readJson = (file: string): unknown => JSON.parse(readFileSync(file, 'utf8'));

const jsonFilesIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort();

const rubricFile = /^v(\d+)\.json$/;

/** The version that judges a review which names none: the only one there was when the review format began. */
export const firstRubricVersion = 1;

/** The rubric versions that ship with the app, ascending; a new session is judged by the last. */
const rubricVersions = (appFolder: string): number[] =>
  readdirSync(path.join(appFolder, 'seeds', 'rubric'))
    .map((name) => Number(rubricFile.exec(name)?.[1] ?? 0))
    .filter((version) => version > 0)
    .sort((a, b) => a - b);

/** The judging data by version of the rubric. */
export type JudgingData = {
  /** Rubric, exercises and cautions; under the first version of the rubric unless one is named. */
  readonly catalogue: (version?: number) => Catalogue;
  /** The rubric versions there are, ascending. */
  readonly rubricVersions: () => readonly number[];
  /** SHA-256 of what grades under a version of the rubric are made from: the judging data, and the app's version. */
  readonly fingerprint: (version: number) => string;
};

/** The judging data that ships in an app's folder. */
export const judgingDataOf = (appFolder: string): JudgingData => ({
  catalogue: (version) => loadCatalogue(appFolder, version),
  rubricVersions: () => rubricVersions(appFolder),
  fingerprint: (version) => fingerprintOf(appFolder, version),
});

const load = (appFolder: string, asked: number | Rubric): Catalogue => {
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
  const rubric = typeof asked === 'number' ? read('rubric', `v${asked}.json`) : asked;
  const translations = jsonFilesIn(path.join(seeds, 'language')).map((name) => read('language', name));
  const commonFaults = read('common-faults.json');
  return buildCatalogue({ rubric, exerciseFiles, commonFaults, cautions, translations });
};

/**
 * The judging data that ships with the app under one version of the rubric, read once per folder and version: rubric,
 * exercises and cautions of `appFolder/seeds`. Throws a ProblemError (`internal`) naming the file and the place where
 * it is wrong.
 */
export const loadCatalogue = (appFolder: string, version: number = firstRubricVersion): Catalogue => {
  const folder = path.resolve(appFolder);
  const key = `${version} ${folder}`;
  const known = loaded.get(key);
  if (known !== undefined) return known;
  try {
    const catalogue = load(folder, version);
    loaded.set(key, catalogue);
    return catalogue;
  } catch (cause) {
    const place = cause instanceof Error ? cause.message : String(cause);
    throw new ProblemError('internal', 'shippedUnreadable', { place }, { cause });
  }
};

/**
 * The judging data that ships with the app under a rubric of somebody's own. Throws a ProblemError (`bad-review`) naming
 * what the exercises need and the rubric doesn't have.
 */
export const catalogueUnder = (appFolder: string, rubric: Rubric): Catalogue => {
  loadCatalogue(appFolder);
  try {
    return load(path.resolve(appFolder), rubric);
  } catch (cause) {
    const place = cause instanceof Error ? cause.message : String(cause);
    throw new ProblemError('bad-review', 'rubricUnfit', { place }, { cause });
  }
};

const fingerprints = new Map<string, string>();

function fingerprintOf(appFolder: string, version: number): string {
  const folder = path.resolve(appFolder);
  const key = `${version} ${folder}`;
  const known = fingerprints.get(key);
  if (known !== undefined) return known;
  const { rubric, exercises } = loadCatalogue(folder, version);
  const content = JSON.stringify([appVersion(folder), rubric, exercises]);
  const fingerprint = createHash('sha256').update(content).digest('hex');
  fingerprints.set(key, fingerprint);
  return fingerprint;
}
