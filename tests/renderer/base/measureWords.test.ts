import fc from 'fast-check';
import { expect, it, onTestFinished } from 'vitest';
import {
  decimal,
  depthWords,
  figureWords,
  inCentimetres,
  inSeconds,
  inTens,
} from '../../../renderer/base/measureWords.ts';
import { deskLanguage } from '../../../renderer/words/deskLanguage.ts';

it('writes a real minus, and none before a zero', () => {
  expect(decimal(-1.25, 1)).toBe('−1.3');
  expect(decimal(-0.004, 2)).toBe('0.00');
  expect(decimal(1234.5, 0)).toBe('1,235');
});

it('writes numbers as German does on a German desk', () => {
  deskLanguage.getState().choose('de');
  onTestFinished(() => deskLanguage.getState().choose('en'));
  expect(decimal(-1.25, 1)).toBe('−1,3');
  expect(decimal(-0.004, 2)).toBe('0,00');
  expect(decimal(1234.5, 0)).toBe('1.235');
});

it('writes metres as centimetres and seconds to the hundredth, uncertainty rounded up', () => {
  expect(figureWords(inCentimetres({ value: 0.5291, plusMinus: 0.0042 }))).toBe('52.9 ± 0.5');
  expect(figureWords(inSeconds({ value: 1.6, plusMinus: 0.031 }))).toBe('1.60 ± 0.04');
  expect(figureWords(inSeconds({ value: 1.6, plusMinus: 0.03 }))).toBe('1.60 ± 0.03');
});

it('never says that an uncertainty is nothing', () => {
  expect(inSeconds({ value: 0, plusMinus: 0 })).toEqual({ value: '0.00', margin: '0.01' });
});

it('prints an angle no finer than ten degrees', () => {
  expect(figureWords(inTens({ value: 98.4, plusMinus: 6 }))).toBe('100 ± 10');
  expect(figureWords(inTens({ value: -4, plusMinus: 12 }))).toBe('0 ± 20');
  fc.assert(
    fc.property(fc.double({ min: -180, max: 180, noNaN: true }), (value) => {
      const printed = Number(inTens({ value, plusMinus: 3 }).value.replace('−', '-'));
      expect(Math.abs(printed % 10)).toBe(0);
      expect(Math.abs(printed - value)).toBeLessThanOrEqual(5);
    }),
  );
});

it.each([
  ['reached', { value: -0.076, plusMinus: 0.021 }, 'reached, 7.6 ± 2.1 cm below'],
  ['short', { value: 0.086, plusMinus: 0.02 }, 'short, 8.6 ± 2.0 cm above'],
  ['tooClose', { value: -0.011, plusMinus: 0.02 }, 'too close to call, 1.1 ± 2.0 cm below'],
  ['reached', null, 'reached'],
] as const)('words a depth that is %s', (outcome, depthM, words) => {
  expect(depthWords(outcome, depthM)).toBe(words);
});
