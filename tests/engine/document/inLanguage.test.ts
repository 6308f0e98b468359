import { describe, expect, it } from 'vitest';
import { inLanguage } from '../../../engine/document/inLanguage.ts';

// Decimal signs, dates and lists: Unicode CLDR, locales en-GB and de-DE (from memory).
const [english, german] = [inLanguage('en-GB'), inLanguage('de-DE')];

describe('numbers, dates and lists of a language', () => {
  it('parts a score by a point in English and a comma in German', () => {
    expect(english.score(87.25)).toBe('87.2');
    expect(german.score(87.25)).toBe('87,2');
  });

  it('writes a time of a clip by minute, second and thousandth', () => {
    expect(english.clock(67_300_000)).toBe('1:07.300');
    expect(german.clock(67_300_000)).toBe('1:07,300');
  });

  it('writes a load with its unit', () => {
    expect(english.load(90, 'kg')).toBe('90 kg');
    expect(german.load(61.25, 'kg').replace(/\s/g, ' ')).toBe('61,25 kg');
    // 100 kg ÷ 0.45359237 kg = 220.46 lb, to the nearest half pound.
    expect(german.load(100, 'lb').replace(/\s/g, ' ')).toBe('220,5 lb');
  });

  it('names the month, and joins a list with the word of the language', () => {
    expect(german.date('2026-03-01')).toBe('1. März 2026');
    expect(english.date('2026-03-01')).toBe('1 March 2026');
    expect(german.list(['a', 'b', 'c'])).toBe('a, b und c');
  });
});
