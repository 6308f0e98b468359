import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alignReps } from '../../../engine/cameras/alignReps.ts';
import { acrossCameras, offsetBetween } from '../../../engine/cameras/cameraClock.ts';

describe('turning points that two cameras saw', () => {
  const turns = [2.1, 4.4, 6.2, 9.0, 11.9];

  it('come together at the offset of their clocks', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -8, max: 8, noNaN: true }),
        fc.array(fc.double({ min: -0.04, max: 0.04, noNaN: true }), { minLength: 5, maxLength: 5 }),
        (offsetS, errors) => {
          const seen = turns.map((turn, place) => turn + offsetS + (errors[place] ?? 0));
          expect(Math.abs((alignReps(turns, seen) ?? 99) - offsetS)).toBeLessThanOrEqual(0.04);
        },
      ),
    );
  });

  it('come together though one camera missed the first and the other the last', () => {
    expect(
      alignReps(
        turns.slice(0, 4),
        turns.slice(1).map((turn) => turn - 1.5),
      ),
    ).toBeCloseTo(-1.5, 6);
  });

  it('of reps that are all alike are not laid anywhere when both clips are cut', () => {
    expect(alignReps([1, 3, 5, 7], [2, 4, 6, 8])).toBeCloseTo(1, 6);
    expect(alignReps([1, 3, 5, 7], [4, 6, 8])).toBeNull();
  });

  it('need two that come together, and most of those that were seen', () => {
    expect(alignReps([], [1, 2])).toBeNull();
    expect(alignReps([3], [5])).toBeNull();
    expect(alignReps([1, 2.5, 6, 11, 19], [1, 4, 4.9, 12.3, 30])).toBeNull();
  });
});

describe('the clocks of two cameras', () => {
  const lead = { realTimeFactor: 1 };
  const slow = { realTimeFactor: 8 };

  it('meet at the moment that they were laid together by, in slow motion too', () => {
    // The lead's 2 s are the 24th second of a clip that runs eight times slower: 3 s of real time.
    const offsetUs = offsetBetween({ us: 2_000_000, ...lead }, { us: 24_000_000, ...slow });
    expect(offsetUs).toBe(1_000_000);
    expect(acrossCameras(2_000_000, { ...lead, offsetUs: 0 }, { ...slow, offsetUs })).toBe(24_000_000);
    expect(acrossCameras(2_500_000, { ...lead, offsetUs: 0 }, { ...slow, offsetUs })).toBe(28_000_000);
  });

  it('lead back to where they led from, to the microsecond of the slower one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 600_000_000 }),
        fc.integer({ min: -60_000_000, max: 60_000_000 }),
        (us, offsetUs) => {
          expect(
            acrossCameras(
              acrossCameras(us, { ...lead, offsetUs: 0 }, { ...slow, offsetUs }),
              { ...slow, offsetUs },
              { ...lead, offsetUs: 0 },
            ),
          ).toBe(us);
        },
      ),
    );
  });
});
