import fCdf from '@stdlib/stats-base-dists-f-cdf';
import fQuantileOf from '@stdlib/stats-base-dists-f-quantile';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fQuantile } from '../../engine/agreement/fDistribution.ts';

const degrees = fc.integer({ min: 1, max: 200 });

describe('the F distribution against a general statistics library', () => {
  it('has quantiles that stand for their probability', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), degrees, degrees, (share, one, two) => {
        expect(fCdf(fQuantile(share, one, two), one, two)).toBeCloseTo(share, 9);
      }),
    );
  });

  it('has the same quantiles', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), degrees, degrees, (share, one, two) => {
        const theirs = fQuantileOf(share, one, two);
        expect(Math.abs(fQuantile(share, one, two) - theirs)).toBeLessThan(1e-6 * Math.max(1, theirs));
      }),
    );
  });

  it('reads 4.96 at 95 % with 1 and 10 degrees of freedom, as printed tables do (from memory)', () => {
    expect(fQuantile(0.95, 1, 10)).toBeCloseTo(4.9646, 4);
  });
});
