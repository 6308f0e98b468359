import { describe, expect, it } from 'vitest';
import { type Judged, sortByAnswer } from '../../../../electron/backend/measure/suggestionsOf.ts';
import type { Suggestion } from '../../../../engine/motion/suggestion.ts';

const suggestion: Suggestion = {
  id: 'depth/short',
  criterion: 'depth',
  fault: 'shortOfDepth',
  severity: 'correct',
  reps: [1, 3],
  atS: 2,
  measure: { name: 'depth', value: 0.08, plusMinus: 0.02, unit: 'm' },
  message: { id: 'creaseAboveKnee', values: { rep: 1, value: 8, within: 2, alsoCount: 1, alsoReps: [3] } },
};

const judged = (flags: Judged['flags'], numberOf: Judged['numberOf'] = (index) => index): Judged => ({
  answers: [],
  flags,
  numberOf,
});
const isOpen = (held: Judged) => sortByAnswer([suggestion], held).open.length === 1;
const flag = { criterion: 'depth', fault: 'shortOfDepth', severity: 'adjust', reps: [1, 3] } as const;
const of = (reps: 'set' | number[], other: Partial<Judged['flags'][number]> = {}) => ({ ...flag, reps, ...other });

describe('a suggestion is answered by flags', () => {
  it.each<[string, Judged['flags'], boolean]>([
    ['nothing', [], true],
    ['the same fault on its reps, whatever its severity', [of([1, 3])], false],
    ['the same fault on more reps', [of([1, 2, 3])], false],
    ['the same fault on the whole set', [of('set')], false],
    ['two flags that share its reps', [of([1]), of([3])], false],
    ['the same fault on some of its reps', [of([1, 2])], true],
    ['another fault', [of([1, 3], { fault: 'buttWink' })], true],
    ['another criterion', [of([1, 3], { criterion: 'barPath' })], true],
    ['praise', [of([1, 3], { severity: 'keep' })], true],
  ])('%s: still open = %j', (_, flags, open) => {
    expect(isOpen(judged(flags))).toBe(open);
  });

  it('by the clip’s own rep numbers, where a measured rep has one', () => {
    const shifted = (index: number) => (index === 1 ? undefined : index - 1);
    expect(isOpen(judged([of([1, 2])], shifted))).toBe(true);
    expect(isOpen(judged([of([2, 4])], (index) => index + 1))).toBe(false);
  });
});
