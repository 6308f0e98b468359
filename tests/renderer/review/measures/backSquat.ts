import { readFileSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';
import { exerciseFileSchema } from '../../../../engine/exercises/exercise.ts';

const file = path.join(import.meta.dirname, '../../../../seeds/exercises/squat.json');
const found = v
  .parse(exerciseFileSchema, JSON.parse(readFileSync(file, 'utf8')))
  .exercises.find(({ id }) => id === 'back-squat');
if (found === undefined) throw new Error('The library has no back squat.');

/** The back squat of the exercise library, without the faults of its pattern. */
export const backSquat = found;
