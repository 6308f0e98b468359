import { folded } from './folding.ts';
import { type Writing, writingOf } from './scripts.ts';

/** A part of a name as it may stand alone in a text. */
export type NamePart = {
  /** As the name has it. */
  readonly written: string;
  /** The ways in which it is spelled, folded. */
  readonly forms: readonly string[];
  readonly writing: Writing;
  /** `guess`: where the name is cut is not certain; `short`: so few letters stand in many texts; `small`: "van", "de". */
  readonly tells: 'surely' | 'guess' | 'short' | 'small';
};

const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });
/** The characters of a text as people count them. */
export const charactersOf = (text: string): string[] => [...graphemes.segment(text)].map(({ segment }) => segment);

/** Family names of two characters, in names that are written without a space. */
const longFamilyNames =
  /^(?:欧阳|歐陽|司马|司馬|上官|诸葛|諸葛|夏侯|东方|東方|皇甫|尉迟|尉遲|公孙|公孫|令狐|慕容|司徒|端木|南宫|南宮|百里|独孤|獨孤|남궁|황보|제갈|선우|독고|사공|서문)/u;

/** Words within names that name nobody by themselves. */
const smallWords = new Set(
  'af al ap at av bin bint da das de degli dei del della den der des di do dos du e el et i ibn la las le les los of op the ten ter und van vom von y zu zum zur'.split(
    ' ',
  ),
);

/** The words of a name as it is written. */
export const wordsOf = (fullName: string): string[] =>
  fullName
    .trim()
    .split(/[\s,;/()"“”„・·•_]+/u)
    .filter((word) => /\p{L}/u.test(word));

const isOnly = (word: string, script: RegExp): boolean => script.test(word);
const onlyHan = /^[\p{sc=Han}々]+$/u;
const onlyHangul = /^\p{sc=Hangul}+$/u;

/** Where a name without a space is cut into family and given name, the likeliest first; nowhere if it can't be. */
function cutsOf(word: string): readonly number[] {
  const written = word.normalize('NFC');
  const { length } = charactersOf(written);
  const isHangul = isOnly(written, onlyHangul);
  if (length < 2 || length > 5 || !(isHangul || isOnly(written, onlyHan))) return [];
  if (length > 2 && longFamilyNames.test(written)) return [2];
  if (isHangul) return length === 2 ? [] : [1];
  return [[], [], [1], [1, 2], [2, 1], [2, 3]][length] ?? [];
}

/** The name by which one is called: the first word as it is written; of one word with the family name before it, the rest. */
export function givenName(fullName: string): string {
  const [first, second] = fullName.trim().split(/\s+/u);
  if (first === undefined || second !== undefined) return first ?? fullName;
  const characters = charactersOf(first.normalize('NFC'));
  const [cut] = cutsOf(first);
  // Two characters are as often a family name alone.
  return cut === undefined || characters.length < 3 ? first : characters.slice(cut).join('');
}

/** The ways to spell a folded word: umlauts as two letters or as none. */
function formsOf(written: string): readonly string[] {
  const plain = folded(written);
  const asTwo = folded(
    written
      .normalize('NFC')
      .replace(/[äÄ]/g, 'ae')
      .replace(/[öÖøØ]/g, 'oe')
      .replace(/[üÜ]/g, 'ue')
      .replace(/[åÅ]/g, 'aa'),
  );
  // "Mueller" is also "Müller"; "Baer" would be "bar".
  const asOne = plain.length < 5 ? plain : plain.replace(/(?<=\p{L})([aou])e(?=[^\Waeiou])/gu, '$1');
  const withoutArticle = /^ال\p{L}{3}/u.test(plain) ? [plain.slice(2)] : [];
  return [...new Set([plain, asTwo, asOne, ...withoutArticle])].filter((form) => form !== '');
}

function partOf(written: string, tells: NamePart['tells'] = 'surely'): NamePart {
  const letters = [...written.normalize('NFC').matchAll(/[\p{L}\p{M}]/gu)];
  const writing = writingOf(letters[0]?.[0] ?? '');
  const least = writing === 'hangul' || writing === 'unspaced' ? 2 : 3;
  const isSmall = smallWords.has(folded(written));
  return {
    written,
    forms: formsOf(written),
    writing,
    tells: isSmall ? 'small' : letters.length < least ? 'short' : tells,
  };
}

/** The parts of one word of a name: itself, what hyphens and apostrophes join, family and given name. */
function partsOfWord(word: string): NamePart[] {
  const bare = word.replace(/^[^\p{L}]+|[^\p{L}\p{M}]+$/gu, '');
  const joined = bare.split(/[-‐‑–'’ʼ.]+/u).filter((one) => /\p{L}/u.test(one));
  const pieces = joined.length > 1 ? joined.filter((one) => [...one].length > 1) : [];
  const characters = charactersOf(bare.normalize('NFC'));
  const cut = cutsOf(bare).flatMap((at, rank) => {
    const tells = rank === 0 ? 'surely' : 'guess';
    return [partOf(characters.slice(0, at).join(''), tells), partOf(characters.slice(at).join(''), tells)];
  });
  return [partOf(bare), ...pieces.map((piece) => partOf(piece)), ...cut];
}

/** What of a name may stand alone; small words in small letters name nobody. */
export function partsOfName(fullName: string): readonly NamePart[] {
  const parts = wordsOf(fullName).flatMap(partsOfWord);
  const isTelling = ({ tells, written }: NamePart): boolean => tells !== 'small' || /^\p{Lu}/u.test(written);
  const once = new Map(parts.filter(isTelling).map((part) => [part.forms.join(' '), part]));
  return [...once.values()];
}
