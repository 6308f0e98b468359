import { describe, expect, it } from 'vitest';
import { languages, localeOf } from '../../../engine/language/language.ts';
import { wordings } from '../../../engine/letter/wording/wordings.ts';
import { english as englishSheet } from '../../../engine/sheet/english.ts';
import { german as germanSheet } from '../../../engine/sheet/german.ts';

/** Every text of a catalogue of wording by its path; the forms of a counted text are one. */
function textsOf(value: unknown, path = ''): [string, string][] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  if ('other' in value) return [[path, Object.values(value).join(' ')]];
  return Object.entries(value).flatMap(([key, one]) => textsOf(one, `${path}.${key}`));
}

const placesOf = (text: string): string[] => [...new Set(text.match(/\{\w+\}/g))].sort();

const english = new Map(textsOf(wordings.en));
const others = languages.filter((language) => language !== 'en');

describe.each(others)('the wording of the letter, %s', (language) => {
  const own = new Map(textsOf(wordings[language]));

  it('has every text that the English has, and none besides', () => {
    expect([...own.keys()].sort()).toEqual([...english.keys()].sort());
  });

  it('speaks of the same things in each', () => {
    for (const [path, text] of own) expect([path, placesOf(text)]).toEqual([path, placesOf(english.get(path) ?? '')]);
  });

  it('leaves no sentence in English', () => {
    const same = [...own].filter(([path, text]) => /[A-Za-z]{3,} [a-z]{2,}/.test(text) && english.get(path) === text);
    expect(same).toEqual([]);
  });

  it('has a form for every plural of the language', () => {
    const { pluralCategories } = new Intl.PluralRules(localeOf[language]).resolvedOptions();
    for (const value of Object.values(wordings[language].coach)) {
      if (typeof value !== 'object' || !('other' in value)) continue;
      expect(Object.keys(value).sort()).toEqual([...pluralCategories].sort());
    }
  });
});

describe('the wording of the sheet, de', () => {
  it('has every text that the English has, about the same things', () => {
    const own = new Map(textsOf(germanSheet));
    const from = new Map(textsOf(englishSheet));
    expect([...own.keys()].sort()).toEqual([...from.keys()].sort());
    for (const [path, text] of own) expect([path, placesOf(text)]).toEqual([path, placesOf(from.get(path) ?? '')]);
  });
});

describe('German typography', () => {
  // Quotation marks after Duden, "Textverarbeitung und E-Mails" (from memory): low 99 opens, high 66 closes.
  it('quotes with „ and “, and never with straight or English marks', () => {
    for (const [, text] of [...textsOf(wordings.de), ...textsOf(germanSheet)]) {
      expect(text).not.toMatch(/["”]|'/);
      expect(text.match(/„/g)?.length).toBe(text.match(/“/g)?.length);
    }
  });
});
