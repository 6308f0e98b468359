import { describe, expect, it } from 'vitest';
import { cautionsDue } from '../../../engine/cautions/cautionsDue.ts';
import type { Flag } from '../../../engine/review/review.ts';
import { shippedUnder } from '../../seeds/shippedCatalogue.ts';
import { entry, flag, review } from '../reviews.ts';

const third = shippedUnder(3);
const due = (...flags: readonly Flag[]): string[] => {
  const one = { ...review(), entries: [entry({ exercise: 'back-squat', flags: [...flags] })] };
  return cautionsDue(one, third).map(({ id }) => id);
};
const loose = (change: Partial<Flag> = {}): Flag =>
  flag({ criterion: 'setUp', severity: 'stop', fault: 'discNotSecured', ...change });

describe('the caution of a hazard', () => {
  it('is due where the hazard was found, besides those of the lift', () => {
    expect(due(loose())).toEqual(expect.arrayContaining(['loose-discs', 'squat-safety-arms']));
  });

  it('is not due where nobody saw the hazard, or where it was praised', () => {
    expect(due()).not.toContain('loose-discs');
    expect(due(loose({ severity: 'keep', fault: null }))).not.toContain('loose-discs');
  });

  it('is not that of another hazard', () => {
    expect(due(loose({ fault: 'floorUnstable', severity: 'correct' }))).not.toContain('loose-discs');
    expect(due(loose({ fault: 'floorUnstable', severity: 'correct' }))).toContain('floor-and-space');
  });
});
