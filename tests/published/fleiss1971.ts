import type { Severity } from '../../engine/rubric/rubric.ts';

/** Thirty subjects by five categories, six raters each: the worked example of Fleiss 1971, Psychological Bulletin 76:378. */
export const fleiss1971: readonly (readonly number[])[] =
  `0 0 0 6 0 | 0 3 0 0 3 | 0 1 4 0 1 | 0 0 0 0 6 | 0 3 0 3 0 | 2 0 4 0 0 | 0 0 4 0 2 | 2 0 3 1 0 | 2 0 0 4 0 | 0 0 0 0 6 |
  1 0 0 5 0 | 1 1 0 4 0 | 0 3 3 0 0 | 1 0 0 5 0 | 0 2 0 3 1 | 0 0 5 0 1 | 3 0 0 1 2 | 5 1 0 0 0 | 0 2 0 4 0 | 1 0 2 0 3 |
  0 0 0 0 6 | 0 1 0 5 0 | 0 2 0 1 3 | 2 0 0 4 0 | 1 0 0 4 1 | 0 5 0 1 0 | 4 0 0 0 2 | 0 2 0 4 0 | 1 0 5 0 0 | 0 0 0 0 6`
    .split('|')
    .map((row) => row.trim().split(/\s+/).map(Number));

const categories: readonly Severity[] = ['keep', 'prefer', 'adjust', 'correct', 'stop'];

/** The same as what six reviewers said of thirty reps: `[reviewer][rep]`, each category one severity. */
export const fleissReviewers: readonly (readonly Severity[])[] = Array.from({ length: 6 }, (_, reviewer) =>
  fleiss1971.map((counts) => {
    const given = counts.flatMap((count, category) => new Array<Severity>(count).fill(categories[category] ?? 'keep'));
    return given[reviewer] ?? 'keep';
  }),
);
