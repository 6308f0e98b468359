import { readdirSync } from 'node:fs';
import path from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, it } from 'vitest';

const folder = path.resolve(import.meta.dirname, '../../../engine/wording');

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

/** Plain words, as the ICU parser numbers them. */
const literal = 0;

/** What a pattern can say in a self-review, whatever its other values are. */
function saidToOneself(elements: readonly Element[]): string {
  return elements
    .map((element) => {
      if ('options' in element) {
        const { value, options } = element;
        const chosen = value === 'voice' ? [options.self ?? options.other] : Object.values(options);
        return chosen.map((option) => saidToOneself(option?.value ?? [])).join(' ');
      }
      return element.type === literal && 'value' in element ? String(element.value) : '';
    })
    .join(' ');
}

const patternsIn = (value: unknown, at: string): [string, string][] => {
  if (typeof value === 'string') return [[at, value]];
  return typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, one]) => patternsIn(one, `${at}.${key}`))
    : [];
};

async function selfReviewIn(language: string): Promise<[string, string][]> {
  const topics = readdirSync(path.join(folder, language, 'desk')).filter((file) => file.endsWith('.ts'));
  const patterns = await Promise.all(
    topics.map(async (topic) => patternsIn({ ...(await import(path.join(folder, language, 'desk', topic))) }, topic)),
  );
  return patterns.flat().map(([id, pattern]) => {
    const ast = new IntlMessageFormat(pattern, 'en', undefined, { ignoreTag: true }).getAst();
    return [id, saidToOneself(ast)];
  });
}

const speaksOf = (words: RegExp, texts: readonly [string, string][]): [string, string][] =>
  texts.filter(([, text]) => words.test(text));

describe('a self-review, where the desk speaks to the one who lifts', () => {
  it('names no third person in English, and says I, not you', async () => {
    const texts = await selfReviewIn('english');
    expect(texts.length).toBeGreaterThan(100);
    expect(speaksOf(/\b(trainees?|lifters?|athletes?)\b/i, texts)).toEqual([]);
    expect(speaksOf(/\b(you|your|yours|yourself)\b/i, texts)).toEqual([]);
  });

  it('names no third person in German, and says ich, not du', async () => {
    const texts = await selfReviewIn('german');
    expect(texts.length).toBeGreaterThan(100);
    expect(speaksOf(/\b(Athlet\p{L}*|Trainees?|Schützling\p{L}*)\b/iu, texts)).toEqual([]);
    expect(speaksOf(/(?<!\p{L})(du|dich|dir|dein\p{L}*)(?!\p{L})/iu, texts)).toEqual([]);
  });
});
