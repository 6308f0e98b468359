import { readFile } from 'node:fs/promises';
import path from 'node:path';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
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
    throw new ProblemError('not-found', `There is no rubric ${file}; name a version, or a rubric file that exists.`);
  });
  const parsed = parseRubric(parseJson(text, file));
  if (!parsed.ok) throw new ProblemError('bad-review', parsed.sentence);
  return parsed.rubric;
}

function parseJson(text: string, file: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new ProblemError('bad-review', `${file} is not JSON, so no rubric was read from it; check the file.`);
  }
}

/**
 * The exercise with an id that a person typed. Throws `not-found`.
 * @param outcome what did not happen, for the sentence: "nothing was measured"
 */
export function requireExercise(exercises: readonly Exercise[], id: string, outcome: string): Exercise {
  const known = exercises.find((exercise) => exercise.id === id);
  if (known !== undefined) return known;
  const shown = oneLine(id).slice(0, 60);
  throw new ProblemError(
    'not-found',
    `The library has no exercise "${shown}", so ${outcome}; see rackside exercise list.`,
  );
}
