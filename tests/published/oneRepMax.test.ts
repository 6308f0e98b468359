import { describe, expect, it } from 'vitest';
import { estimateOneRepMax } from '../../engine/programme/oneRepMax.ts';

// Formulas from memory (Epley 1985 to Wathan 1994); values computed apart from the product, for 100 kg.
const table: readonly (readonly [string, number, number, number, number])[] = [
  ['Epley', 110.0, 116.667, 126.667, 133.333],
  ['Brzycki', 105.882, 112.5, 124.138, 133.333],
  ['Lombardi', 111.612, 117.462, 123.114, 125.893],
  ['Lander', 107.197, 113.709, 125.109, 134.07],
  ["O'Conner", 107.5, 112.5, 120.0, 125.0],
  ['Mayhew', 113.99, 119.011, 126.286, 130.934],
  ['Wathan', 108.98, 116.583, 127.671, 134.747],
];

describe('the load for one repetition', () => {
  it.each(table)('%s at 3, 5, 8 and 10 repetitions', (name, ...expected) => {
    const given = [3, 5, 8, 10].map(
      (reps) => estimateOneRepMax(100, reps)?.byFormula.find((formula) => formula.name === name)?.kilograms,
    );
    for (const [index, value] of expected.entries()) expect(given[index]).toBeCloseTo(value, 2);
  });

  it('is a range over the formulas', () => {
    expect(estimateOneRepMax(100, 10)?.lowKg).toBeCloseTo(125, 3);
    expect(estimateOneRepMax(100, 10)?.highKg).toBeCloseTo(134.747, 2);
  });

  it('is the load itself for one repetition', () => {
    expect(estimateOneRepMax(142.5, 1)).toMatchObject({ lowKg: 142.5, highKg: 142.5 });
  });

  it.each([13, 20, 37, 0, -1, 2.5, Number.NaN])('is refused for %s repetitions', (reps) => {
    expect(estimateOneRepMax(100, reps)).toBeNull();
  });
});
