import { afterEach, expect, it } from 'vitest';
import {
  agreedShare,
  day,
  estimatedLoadWords,
  gain,
  loadWords,
  plain,
  points,
  share,
} from '../../../renderer/base/figures.ts';
import { deskLanguage } from '../../../renderer/words/deskLanguage.ts';

afterEach(() => deskLanguage.getState().choose('en'));

it('writes numbers, shares, loads and days as English does', () => {
  expect([points(83.46), gain(1.99), plain(2.5), plain(1234.5)]).toEqual(['83.4', '1.9', '2.5', '1,234.5']);
  expect([share(0.5), agreedShare(0.996)]).toEqual(['50%', '99%']);
  expect([loadWords(62.5, 'kg'), estimatedLoadWords(74.6, 'kg')]).toEqual(['62.5 kg', '75 kg']);
  expect(day('2025-11-08')).toBe('8 Nov 2025');
});

// Decimal comma, a point between thousands, a space before the sign and the point after an ordinal: DIN 5008 and Unicode CLDR.
it('writes them as German does once the desk speaks German', () => {
  deskLanguage.getState().choose('de');
  expect([points(83.46), gain(1.99), plain(2.5), plain(1234.5)]).toEqual(['83,4', '1,9', '2,5', '1.234,5']);
  expect(share(0.5)).toBe('50\u00a0%');
  expect([loadWords(62.5, 'kg'), estimatedLoadWords(74.6, 'kg')]).toEqual(['62,5 kg', '75 kg']);
  expect(day('2025-11-08')).toBe('8. Nov. 2025');
});
