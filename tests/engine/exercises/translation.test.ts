import { describe, expect, it } from 'vitest';
import { inOneEach } from '../../../engine/exercises/catalogue.ts';

describe('a translation in several parts', () => {
  it('is one for each language, with the texts of every part', () => {
    expect(
      inOneEach([
        { language: 'de', texts: { Depth: 'Tiefe' } },
        { language: 'de', texts: { Pauses: 'Pausen', Depth: 'Tiefe' } },
      ]),
    ).toEqual([{ language: 'de', texts: { Depth: 'Tiefe', Pauses: 'Pausen' } }]);
  });

  it('refuses two translations of one text, naming it', () => {
    expect(() =>
      inOneEach([
        { language: 'de', texts: { Depth: 'Tiefe' } },
        { language: 'de', texts: { Depth: 'Weg' } },
      ]),
    ).toThrow('"Depth" is translated in two ways');
  });
});
