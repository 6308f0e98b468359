import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { markFor, parseRubric } from '../../engine/rubric/rubric.ts';

// The percent and grade-point table that US colleges commonly print (4.0 scale with plus and minus;
// the variant with D 63-66 and D- 60-62): common practice, no single source.
const table = [
  ['A+', 97, 100, 4.0],
  ['A', 93, 96, 4.0],
  ['A-', 90, 92, 3.7],
  ['B+', 87, 89, 3.3],
  ['B', 83, 86, 3.0],
  ['B-', 80, 82, 2.7],
  ['C+', 77, 79, 2.3],
  ['C', 73, 76, 2.0],
  ['C-', 70, 72, 1.7],
  ['D+', 67, 69, 1.3],
  ['D', 63, 66, 1.0],
  ['D-', 60, 62, 0.7],
  ['F', 0, 59, 0.0],
] as const;

it.each(table)('%s runs from %d to %d per cent', (letter, from, to, gradePoints) => {
  const parsed = parseRubric(JSON.parse(readFileSync(new URL('../../seeds/rubric/v1.json', import.meta.url), 'utf8')));
  if (!parsed.ok) throw new Error(parsed.sentence);
  for (let score = from; score <= to; score++) {
    expect(markFor(score, parsed.rubric)).toEqual({ score, mark: letter, gradePoints });
  }
});
