import { expect, it } from 'vitest';
import { flagLanes } from '../../../../renderer/review/strip/FlagMarks.tsx';

const marks = (...places: readonly number[]) => places.map((position) => ({ position, width: 0.04 }));

it('keeps marks with room in one lane', () => {
  expect(flagLanes(marks(0.1, 0.2, 0.3))).toEqual([0, 0, 0]);
});

it('puts marks that would touch in lanes of their own, whatever order they come in', () => {
  expect(flagLanes(marks(0.5, 0.52, 0.6))).toEqual([0, 1, 0]);
  expect(flagLanes(marks(0.52, 0.6, 0.5))).toEqual([1, 0, 0]);
});

it('asks for half of each mark’s width between their middles', () => {
  const wide = { position: 0.5, width: 0.06 };
  expect(flagLanes([wide, { position: 0.54, width: 0.02 }])).toEqual([0, 0]);
  expect(flagLanes([wide, { position: 0.53, width: 0.02 }])).toEqual([0, 1]);
});

it('never needs more than three lanes', () => {
  expect(Math.max(...flagLanes(marks(0.5, 0.5, 0.5, 0.5, 0.5)))).toBe(2);
});
