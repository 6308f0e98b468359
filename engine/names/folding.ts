/** A text in the form in which spellings are compared, and where each of its characters came from. */
export type Folded = {
  readonly text: string;
  /** Where the character that a unit of the text came from begins in the original; the length of the original at the end. */
  readonly starts: readonly number[];
  /** Places of the text at which a character, as people count them, begins or ends. */
  readonly edges: ReadonlySet<number>;
};

const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

/** Scripts whose marks only say how a letter is spoken or stressed; elsewhere a mark may be the vowel. */
const plainWithoutMarks = /[\p{sc=Latin}\p{sc=Greek}\p{sc=Cyrillic}\p{sc=Arabic}\p{sc=Hebrew}\p{sc=Syriac}]/u;

/** Letters that are written for one another, and have no common form in Unicode. */
const sameLetters: ReadonlyMap<string, string> = new Map(
  Object.entries({
    ...{ đ: 'd', ð: 'd', ø: 'o', ł: 'l', æ: 'ae', œ: 'oe', þ: 'th', ħ: 'h', ı: 'i', ŋ: 'n', ŧ: 't' },
    ...{ ى: 'ي', ی: 'ي', ې: 'ي', ة: 'ه', ۀ: 'ه', ہ: 'ه', ک: 'ك', ٱ: 'ا', ـ: '' },
    ...{ '’': "'", '‘': "'", ʼ: "'", ʻ: "'", '`': "'", '´': "'", '′': "'" },
    ...{ '‐': '-', '‑': '-', '–': '-', '—': '-' },
  }),
);

const known = new Map<string, string>();

function foldCharacter(character: string): string {
  const before = known.get(character);
  if (before !== undefined) return before;
  const plain = plainCharacter(character);
  if (known.size < 10_000) known.set(character, plain);
  return plain;
}

function plainCharacter(character: string): string {
  const letters = character.normalize('NFKD').toUpperCase().toLowerCase().normalize('NFKD');
  const bare = letters.replace(/[\p{Cf}\p{Variation_Selector}]/gu, '');
  const base = plainWithoutMarks.test(bare) ? bare.replace(/\p{M}/gu, '') : bare;
  const plain = [...base.normalize('NFC')].map((one) => sameLetters.get(one) ?? one).join('');
  return plain
    .replace(/\s/gu, ' ')
    .replace(/[\u30a1-\u30f6]/g, (kana) => String.fromCharCode(kana.charCodeAt(0) - 0x60));
}

/**
 * A text without what two spellings of one name may differ by: composed or decomposed, capitals or not, accents, dotted or dotless i, wide
 * letters, vowel signs of Arabic and Hebrew, katakana or hiragana, marks that nobody sees.
 */
export function fold(text: string): Folded {
  const starts: number[] = [];
  const edges = new Set([0]);
  let folded = '';
  for (const { segment, index } of graphemes.segment(text)) {
    const plain = foldCharacter(segment);
    for (let unit = 0; unit < plain.length; unit += 1) starts.push(index);
    folded += plain;
    edges.add(folded.length);
  }
  starts.push(text.length);
  return { text: folded, starts, edges };
}

/** The text of `fold` alone. */
export const folded = (text: string): string => fold(text).text;

/** Whether two names are spelled alike: composed or decomposed, capitals or not; accents count. */
export const isSameName = (one: string, other: string): boolean => spelling(one) === spelling(other);

const spelling = (name: string): string =>
  name.normalize('NFKC').toUpperCase().toLowerCase().normalize('NFC').trim().replace(/\s+/gu, ' ');
