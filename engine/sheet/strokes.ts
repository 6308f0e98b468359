import type { Weight } from '../rubric/rubric.ts';

/** The strokes of a weight: the heavier the remark, the more of them; praise is a plus. Always shown beside the word. */
export const strokes = {
  keep: '+',
  prefer: '|',
  adjust: '||',
  correct: '|||',
  stop: '||||',
} as const satisfies Readonly<Record<Weight, string>>;
