import { expect, it } from 'vitest';
import { readWarning, type WarningId, warning, warningTexts } from '../../../engine/motion/warnings.ts';
import { sayWarning } from '../../../engine/sheet/sayWarning.ts';
import { sheetLanguage } from '../../../engine/sheet/sheetLanguage.ts';

const ids = Object.keys(warningTexts) as WarningId[];
const placesOf = (text: string): string[] => [...text.matchAll(/\{(\w+)\}/g)].map(([, place = '']) => place);
const sentenceOf = (id: WarningId): string => warningTexts[id].replace(/\{\w+\}/g, '1.25');

it.each(ids)('is known again by its sentence, with its numbers: %s', (id) => {
  const values = Object.fromEntries(placesOf(warningTexts[id]).map((place) => [place, '1.25']));
  expect(readWarning(sentenceOf(id))).toEqual({ id, values });
});

it.each(ids)('is said in either language with all of its numbers and nothing to click on: %s', (id) => {
  const english = sayWarning(sentenceOf(id), sheetLanguage('en'));
  const german = sayWarning(sentenceOf(id), sheetLanguage('de'));
  expect(english).not.toMatch(/[{}]|click|draw a/);
  expect(german).not.toMatch(/[{}]|\bthe\b|\bclick/);
  const numbers = placesOf(warningTexts[id]).length;
  expect(english.match(/1\.25/g) ?? []).toHaveLength(numbers);
  expect(german.match(/1,25/g) ?? []).toHaveLength(numbers);
});

it('leaves alone what is none of them', () => {
  expect(readWarning('The gym was loud.')).toBeNull();
  expect(sayWarning('The gym was loud.', sheetLanguage('de'))).toBe('The gym was loud.');
});

it('fills in numbers', () => {
  expect(warning('discLost', { lost: '12', frames: '300' })).toMatch(/12 of 300 frames/);
});
