import { expect, it } from 'vitest';
import { clipRepOf, clipRepsOf } from '../../../../renderer/review/measures/SuggestionCard.tsx';
import { rep } from './rep.ts';

/** Ten frames a second for ten seconds, in milliseconds, from a first frame at half a second. */
const table = {
  timeBase: { numerator: 1, denominator: 1000 },
  ticks: Array.from({ length: 100 }, (_, frame) => 500 + frame * 100),
  endTicks: 10_500,
};
const at = (frame: number) => ({ frame, ticks: 500 + frame * 100 });
const reps = [
  { index: 1, start: at(0), end: at(8) },
  { index: 2, start: at(12), end: at(44) },
  { index: 3, start: at(50), end: at(80) },
];

it('finds the marked rep that shares most of its time with a measured one', () => {
  expect(clipRepOf(rep, reps, table)).toBe(2);
  expect(clipRepOf({ ...rep, startS: 8.5, endS: 9.5 }, reps, table)).toBeNull();
});

it('gives the numbers on the card, and leaves out reps that nobody marked', () => {
  const measured = [
    { ...rep, index: 1, startS: 1.2, endS: 4.4 },
    { ...rep, index: 2, startS: 5, endS: 8 },
    { ...rep, index: 3, startS: 8.4, endS: 9.8 },
  ];
  expect(clipRepsOf([2, 1, 3, 7], measured, reps, table)).toEqual([2, 3]);
});
