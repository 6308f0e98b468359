import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import * as v from 'valibot';

/** From the packages, wherever this file runs: source or bundle. */
const packages = createRequire(import.meta.url);

/** Countries whose fonts share characters that look a little different in each. */
const countries = ['jp', 'kr', 'sc'] as const;
type Country = (typeof countries)[number];

export type EastAsianWeight = 400 | 700;

/** A font of one weight, cut to some hundred characters, as TrueType. */
export type EastAsianFont = {
  /** Tells it from others, its weight left out. */
  readonly name: string;
  readonly weight: EastAsianWeight;
  /** Those of the text it was opened for. */
  readonly characters: ReadonlySet<string>;
  readonly bytes: Buffer;
};

const eastAsian =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Bopomofo}\u3000-\u30FF\u3200-\u33FF\uFE30-\uFE4F\uFF01-\uFFEE]/gu;
const kana = /[\p{Script=Hiragana}\p{Script=Katakana}]/u;
const hangul = /\p{Script=Hangul}/u;

/**
 * In which country's fonts to look for a character: kana make a text Japanese, and Korean uses the same Chinese characters;
 * a text with neither kana nor Hangul is Chinese.
 */
function among(text: string): (character: string) => readonly Country[] {
  const signs: readonly Country[] = kana.test(text) || hangul.test(text) ? ['jp', 'sc', 'kr'] : ['sc', 'jp', 'kr'];
  return (character) => (hangul.test(character) ? ['kr'] : signs);
}

const packageOf = (country: Country): string => `@fontsource-variable/noto-sans-${country}`;

const unicodeRangesSchema = v.record(v.string(), v.string());

type Part = { readonly file: string; readonly ranges: readonly (readonly [from: number, to: number])[] };

/** "U+25ee8,U+26ff6-26ff8" as numbers (CSS Fonts, unicode-range). */
const rangesOf = (list: string): Part['ranges'] =>
  list.split(',').map((range) => {
    const [from = 0, to = from] = range
      .replace(/^U\+/i, '')
      .split('-')
      .map((digits) => Number.parseInt(digits, 16));
    return [from, to];
  });

const parts = new Map<Country, readonly Part[]>();

/** The files that a country's font is cut into. */
function partsOf(country: Country): readonly Part[] {
  const known = parts.get(country);
  if (known !== undefined) return known;
  const file = packages.resolve(`${packageOf(country)}/unicode.json`);
  const ranges = v.parse(unicodeRangesSchema, JSON.parse(readFileSync(file, 'utf8')));
  const read = Object.entries(ranges).flatMap(([key, list]) => {
    const [, number] = /^\[(\d+)\]$/.exec(key) ?? [];
    if (number === undefined) return [];
    return [{ file: `noto-sans-${country}-${number}-wght-normal.woff2`, ranges: rangesOf(list) }];
  });
  parts.set(country, read);
  return read;
}

type FoundPart = { readonly country: Country; readonly part: Part };

function partWith(character: string, from: readonly Country[]): FoundPart | null {
  const code = character.codePointAt(0) ?? 0;
  for (const country of from) {
    const part = partsOf(country).find(({ ranges }) => ranges.some(([from, to]) => code >= from && code <= to));
    if (part !== undefined) return { country, part };
  }
  return null;
}

const charactersOf = ({ ranges }: Part): string =>
  ranges
    .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, index) => String.fromCodePoint(from + index)))
    .join('');

const opened = new Map<string, Promise<Buffer>>();

async function openPart({ country, part }: FoundPart, weight: EastAsianWeight): Promise<Buffer> {
  const file = packages.resolve(`${packageOf(country)}/files/${part.file}`);
  // Only words that need it wait for it to load.
  const { default: subsetFont } = await import('subset-font');
  return subsetFont(await readFile(file), charactersOf(part), {
    targetFormat: 'truetype',
    variationAxes: { wght: weight },
  });
}

/** The bytes of a part in one weight. The files hold all weights in one, which neither PDF nor the drawing library can use. */
function bytesOf(found: FoundPart, weight: EastAsianWeight): Promise<Buffer> {
  const key = `${found.part.file} ${weight}`;
  const known = opened.get(key) ?? openPart(found, weight);
  opened.set(key, known);
  return known;
}

/**
 * Opens just the fonts that a text's Chinese, Japanese and Korean characters need; none for a text without them. Opened fonts
 * stay open as long as the process.
 */
export async function openEastAsianFonts(text: string, weight: EastAsianWeight): Promise<readonly EastAsianFont[]> {
  // Some signs are set as the plain ones that they stand for.
  const characters = new Set(`${text.normalize('NFC')}${text.normalize('NFKC')}`.match(eastAsian));
  if (characters.size === 0) return [];
  const lookedForIn = among(text);
  const needed = new Map<string, { readonly found: FoundPart; readonly own: Set<string> }>();
  for (const character of characters) {
    const found = partWith(character, lookedForIn(character));
    if (found === null) continue;
    const known = needed.get(found.part.file) ?? { found, own: new Set() };
    known.own.add(character);
    needed.set(found.part.file, known);
  }
  return Promise.all(
    [...needed].map(async ([file, { found, own }]) => ({
      name: file.replace(/-wght-normal\.woff2$/, ''),
      weight,
      characters: own,
      bytes: await bytesOf(found, weight),
    })),
  );
}
