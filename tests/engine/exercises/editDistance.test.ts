import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance } from '../../../engine/exercises/editDistance.ts';

const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 7 });

describe('the distance between two spellings', () => {
  // Textbook pairs of the edit distance; "ca" and "abc" tell the alignment distance (3) from the unrestricted one (2).
  it.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['squat', 'squad', 1],
    ['curl', 'crul', 1],
    ['ca', 'abc', 3],
    ['', 'row', 3],
    ['row', '', 3],
  ])('from %s to %s is %i', (from, to, distance) => {
    expect(editDistance(from, to)).toBe(distance);
  });

  it('is 0 only for the same word, the same both ways, and never more than the longer word', () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        const distance = editDistance(a, b);
        expect(distance === 0).toBe(a === b);
        expect(editDistance(b, a)).toBe(distance);
        expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
        expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
      }),
    );
  });
});
