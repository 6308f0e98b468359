import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import { judgingDataOf, loadCatalogue } from '../../../../electron/backend/catalogue/loadCatalogue.ts';
import { ProblemError } from '../../../../electron/contract/reply.ts';

const appFolder = fileURLToPath(new URL('../../../..', import.meta.url));
const folders: string[] = [];

/** A folder of its own with the judging data that ships. */
const copyOfSeeds = (): string => {
  const folder = mkdtempSync(path.join(tmpdir(), 'rackside-seeds-'));
  folders.push(folder);
  for (const part of ['rubric', 'exercises', 'cautions', 'language', 'common-faults.json']) {
    cpSync(path.join(appFolder, 'seeds', part), path.join(folder, 'seeds', part), { recursive: true });
  }
  return folder;
};

const problemOf = (folder: string) => {
  try {
    loadCatalogue(folder);
  } catch (error) {
    if (error instanceof ProblemError) return { code: error.problem.code, sentence: error.message };
  }
  return undefined;
};

afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

describe('loading the catalogue', () => {
  it('reads the rubric, the exercises and the cautions', () => {
    const catalogue = loadCatalogue(appFolder);
    expect(catalogue.rubric).toMatchObject({ id: 'rackside', version: 1 });
    expect(catalogue.exercises.some((exercise) => exercise.id === 'back-squat')).toBe(true);
    expect(catalogue.cautions.some((caution) => caution.id === 'pain')).toBe(true);
  });

  it('reads each version of the rubric, the first when none is named', () => {
    const { catalogue, rubricVersions } = judgingDataOf(appFolder);
    expect(rubricVersions()).toEqual([1, 2, 3]);
    expect(catalogue()).toBe(catalogue(1));
    const gazes = rubricVersions().map((version) =>
      catalogue(version).exercises.some((exercise) => exercise.criteria.some(({ id }) => id === 'gaze')),
    );
    expect(gazes).toEqual([false, true, true]);
  });

  it('takes a version for one by its name alone', () => {
    const folder = copyOfSeeds();
    for (const name of ['v10.json', 'v2.json.bak', 'vx.json', 'draft.json', 'v0.json']) {
      writeFileSync(path.join(folder, 'seeds/rubric', name), '{}');
    }
    expect(judgingDataOf(folder).rubricVersions()).toEqual([1, 2, 3, 10]);
  });

  it('reads a folder once', () => {
    const folder = copyOfSeeds();
    const first = loadCatalogue(folder);
    rmSync(path.join(folder, 'seeds'), { recursive: true });
    expect(loadCatalogue(path.join(folder, '.'))).toBe(first);
  });

  it('says which file is damaged, and what is unharmed', () => {
    const folder = copyOfSeeds();
    writeFileSync(path.join(folder, 'seeds/exercises/squat.json'), '{ "pattern": ');
    const problem = problemOf(folder);
    expect(problem?.code).toBe('internal');
    expect(problem?.sentence).toMatch(/exercises\/squat\.json.*safe.*\.$/);
  });

  it('can be asked again once the file is mended', () => {
    const folder = copyOfSeeds();
    const file = path.join(folder, 'seeds/cautions/cautions.json');
    writeFileSync(file, '[{}]');
    expect(problemOf(folder)?.sentence).toMatch(/cautions, at 0\.id/);
    cpSync(path.join(appFolder, 'seeds/cautions/cautions.json'), file);
    expect(problemOf(folder)).toBeUndefined();
  });

  it('says when there is no judging data at all', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'rackside-empty-'));
    folders.push(folder);
    expect(problemOf(folder)?.sentence).toMatch(/^The exercise library that comes with Rackside can’t be read/);
  });
});
