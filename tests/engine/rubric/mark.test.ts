import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { markFor, parseRubric } from '../../../engine/rubric/rubric.ts';

const parsed = parseRubric(JSON.parse(readFileSync(new URL('../../../seeds/rubric/v1.json', import.meta.url), 'utf8')));
if (!parsed.ok) throw new Error(parsed.sentence);
const { rubric } = parsed;

it.each([
  [100, 'A+', 4.0],
  [97, 'A+', 4.0],
  [96.999999, 'A', 4.0],
  [92.99999999999999, 'A', 4.0],
  [92.9999999, 'A-', 3.7],
  [89.9, 'B+', 3.3],
  [100 * (1 - 0.1), 'A-', 3.7],
  [60, 'D-', 0.7],
  [59.99, 'F', 0],
  [0, 'F', 0],
])('%f is %s', (score, mark, gradePoints) => {
  expect(markFor(score, rubric)).toEqual({ score, mark, gradePoints });
});

it('is total on 0-100 and a better score never has a worse mark', () => {
  const score = fc.double({ min: 0, max: 100, noNaN: true });
  fc.assert(
    fc.property(score, score, (a, b) => {
      const [low, high] = a <= b ? [a, b] : [b, a];
      expect(markFor(low, rubric).gradePoints).toBeLessThanOrEqual(markFor(high, rubric).gradePoints);
    }),
  );
});

it.each([-0.001, 100.1, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', (score) => {
  expect(() => markFor(score, rubric)).toThrow(RangeError);
});
