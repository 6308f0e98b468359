import { describe, expect, it } from 'vitest';
import type { GradeState } from '../../../engine/grading/grade.ts';
import { toldRange } from '../../../engine/grading/toldRange.ts';

const provisional = (score: number): GradeState => ({ kind: 'provisional', score, mark: 'C', gradePoints: 2 });

describe('the range that is told beside a grade', () => {
  it('is the span that the unseen reps leave open', () => {
    expect(toldRange({ state: provisional(80), range: { low: 70, high: 90 } })).toEqual({ low: 70, high: 90 });
  });

  it('holds the score where what was seen is poorer than the rest is taken to be', () => {
    expect(toldRange({ state: provisional(43.1), range: { low: 56.3, high: 69 } })).toEqual({ low: 43.1, high: 69 });
    expect(toldRange({ state: provisional(98.5), range: { low: 58.1, high: 94.7 } })).toEqual({
      low: 58.1,
      high: 98.5,
    });
  });

  it('is not told of a grade that is exact to a tenth, or of none', () => {
    expect(toldRange({ state: provisional(80), range: { low: 80, high: 80.04 } })).toBeNull();
    expect(toldRange({ state: provisional(80), range: null })).toBeNull();
  });
});
