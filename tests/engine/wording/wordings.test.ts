import { readdirSync } from 'node:fs';
import path from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, it } from 'vitest';
import { localeOf } from '../../../engine/language/language.ts';

const folder = path.resolve(import.meta.dirname, '../../../engine/wording');

/** Every pattern of a module of wording by its path. */
function patternsIn(value: unknown, at = ''): [string, string][] {
  if (typeof value === 'string') return [[at, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => patternsIn(one, `${at}.${key}`));
}

const read = async (language: string, topic: string): Promise<ReadonlyMap<string, string>> =>
  new Map(patternsIn({ ...(await import(path.join(folder, language, topic))) }));

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

/** Plain words, plain arguments, `#` and choices, as the ICU parser numbers them. */
const [literal, pound] = [0, 7];

const elementsOf = (pattern: string): readonly Element[] =>
  new IntlMessageFormat(pattern, 'en', undefined, { ignoreTag: true }).getAst();

/** A pattern's elements, those within its choices too. */
function deep(elements: readonly Element[]): readonly Element[] {
  return elements.flatMap((element) =>
    'options' in element ? [element, ...Object.values(element.options).flatMap(({ value }) => deep(value))] : [element],
  );
}

/** Names of the values that go into a pattern; `voice` is given to every text of the desk, asked for or not. */
const valuesOf = (pattern: string): string[] =>
  [
    ...new Set(
      deep(elementsOf(pattern)).flatMap((element) =>
        element.type === literal || element.type === pound || !('value' in element) ? [] : [String(element.value)],
      ),
    ),
  ]
    .filter((name) => name !== 'voice')
    .sort();

const wordsOf = (pattern: string): string =>
  deep(elementsOf(pattern))
    .flatMap((element) => (element.type === literal && 'value' in element ? [String(element.value)] : []))
    .join(' ');

const topicsIn = (language: string): string[] =>
  readdirSync(path.join(folder, language), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .sort();
const topics = topicsIn('english');
const english = /\b(the|and|of|with|is|are|every|your|reps?|which|from|than|it|its|not|two|for|by)\b/;

it('has every topic in German', () => {
  expect(topicsIn('german')).toEqual(topics);
});

describe.each(topics)('the wording of %s', (topic) => {
  it('has the same texts in both languages, about the same things', async () => {
    const [from, own] = [await read('english', topic), await read('german', topic)];
    expect([...own.keys()].sort()).toEqual([...from.keys()].sort());
    for (const [id, text] of own) expect([id, valuesOf(text)]).toEqual([id, valuesOf(from.get(id) ?? '')]);
  });

  it('has a form for every plural of the language', async () => {
    for (const [language, locale] of [
      ['english', localeOf.en],
      ['german', localeOf.de],
    ] as const) {
      const categories = new Intl.PluralRules(locale).resolvedOptions().pluralCategories;
      for (const [id, pattern] of await read(language, topic)) {
        for (const element of deep(elementsOf(pattern))) {
          if (!('pluralType' in element)) continue;
          const forms = Object.keys(element.options);
          const said = categories.filter((category) => forms.includes(category) || forms.includes('other'));
          expect([id, said]).toEqual([id, categories]);
        }
      }
    }
  });

  // A straight apostrophe takes the meaning from the braces after it (ICU MessageFormat).
  it('holds no straight apostrophe', async () => {
    const all = [...(await read('english', topic)), ...(await read('german', topic))];
    expect(all.filter(([, text]) => text.includes("'"))).toEqual([]);
  });

  it('leaves no sentence in English', async () => {
    const from = await read('english', topic);
    const isSource = (id: string) => id.endsWith('.source');
    const said = [...(await read('german', topic))].filter(([id]) => !isSource(id));
    expect(said.filter(([, text]) => english.test(wordsOf(text)))).toEqual([]);
    const same = said.filter(([id, text]) => /[A-Za-z]{3,} [a-z]{2,}/.test(text) && from.get(id) === text);
    expect(same).toEqual([]);
  });

  it('ends a text as the English does', async () => {
    const from = await read('english', topic);
    const ends = (text: string | undefined) => / .*[.]$/s.test(text ?? '');
    for (const [id, text] of await read('german', topic)) expect([id, ends(text)]).toEqual([id, ends(from.get(id))]);
  });

  // Quotation marks after Duden, "Textverarbeitung und E-Mails" (from memory): low 99 opens, high 66 closes.
  it('quotes in German with „ and “, and never with straight or English marks', async () => {
    for (const [, text] of await read('german', topic)) {
      expect(text).not.toMatch(/["”]|'/);
      expect(text.match(/„/g)?.length).toBe(text.match(/“/g)?.length);
    }
  });
});
