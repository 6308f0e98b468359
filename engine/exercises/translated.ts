import type { Language } from '../language/language.ts';
import type { Catalogue } from './catalogue.ts';
import { textIn } from './translation.ts';

/** Names that other data is looked up by: never translated. */
const ids = new Set(['id', 'pattern', 'criterion', 'narrower', 'partOf', 'exercise', 'takenFrom', 'letter']);

function inTexts<T>(value: T, texts: Readonly<Record<string, string>>): T;
function inTexts(value: unknown, texts: Readonly<Record<string, string>>): unknown {
  if (typeof value === 'string') return textIn(texts, value);
  if (Array.isArray(value)) return value.map((one) => inTexts(one, texts));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, one]) => [key, ids.has(key) ? one : inTexts(one, texts)]);
  return Object.fromEntries(entries);
}

const made = new WeakMap<Catalogue, Map<Language, Catalogue>>();

/** The judging data in a language, text by text; what has no translation stays English. */
export function translated(catalogue: Catalogue, language: Language): Catalogue {
  if (language === (catalogue.language ?? 'en')) return catalogue;
  const known = made.get(catalogue)?.get(language);
  if (known !== undefined) return known;
  const texts = catalogue.translations?.find((one) => one.language === language)?.texts ?? {};
  const { rubric, exercises, cautions } = inTexts(
    { rubric: catalogue.rubric, exercises: catalogue.exercises, cautions: catalogue.cautions },
    texts,
  );
  const result: Catalogue = { ...catalogue, rubric, exercises, cautions, language };
  made.set(catalogue, (made.get(catalogue) ?? new Map()).set(language, result));
  return result;
}
