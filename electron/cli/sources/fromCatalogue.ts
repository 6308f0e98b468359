import { readFile } from 'node:fs/promises';
import path from 'node:path';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { exerciseNamed, type SearchedCatalogue } from '../../../engine/exercises/searchExercises.ts';
import { parseRubric, type Rubric } from '../../../engine/rubric/rubric.ts';
import { judgingDataOf } from '../../backend/catalogue/loadCatalogue.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Host } from '../run/host.ts';
import { oneLine } from '../run/outcome.ts';

/** Reads the rubric that the person named by a version number or a JSON file. Throws a problem with one sentence. */
export async function readRubric(host: Host, name: string): Promise<Rubric> {
  const judging = judgingDataOf(host.appFolder);
  const version = judging.rubricVersions().find((each) => String(each) === name);
  if (version !== undefined) return judging.catalogue(version).rubric;
  const file = path.basename(name);
  const text = await readFile(host.resolve(name), 'utf8').catch(() => {
    throw ProblemError.inWords(
      'not-found',
      `There is no rubric ${file}; give a version number or the path of a rubric file.`,
    );
  });
  const parsed = parseRubric(parseJson(text, file));
  if (!parsed.ok) throw ProblemError.inWords('bad-review', parsed.sentence);
  return parsed.rubric;
}

function parseJson(text: string, file: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw ProblemError.inWords('bad-review', `${file} is not JSON, so no rubric was read from it; check the file.`);
  }
}

/**
 * The exercise that goes by the id or name that a person typed. Throws `not-found`, with those that may have been meant.
 * @param outcome what did not happen, for the sentence: "nothing was measured"
 */
export function requireExercise(catalogue: SearchedCatalogue, typed: string, outcome: string): Exercise {
  const named = exerciseNamed(catalogue, typed);
  if (named.kind === 'found') return named.exercise;
  const shown = oneLine(typed).slice(0, 60);
  const meant = named.near.map(({ id, name }) => `${name} (${id})`);
  const help = meant.length === 0 ? 'see rackside exercise list.' : `did you mean ${choice(meant)}?`;
  throw ProblemError.inWords('not-found', `The library has no exercise "${shown}", so ${outcome}; ${help}`);
}

/** "A", "A or B", "A, B or C". */
const choice = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
