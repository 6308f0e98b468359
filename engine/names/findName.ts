import { endsHere, isAddressed, isCaseOf, stemsOf } from './attached.ts';
import { type Folded, fold } from './folding.ts';
import { type NamePart, partsOfName, wordsOf } from './nameParts.ts';
import { isOrdinary } from './ordinaryWords.ts';
import { hasCapitals, writingOf } from './scripts.ts';
import { initial, isNameless, type NameMode, nobody, shownName } from './shownName.ts';

/** A place of a text at which a hidden name stands, or may stand. */
export type NameSighting = {
  readonly start: number;
  readonly end: number;
  /** `maybe`: it is also a word, or too short to tell; a person has to say. */
  readonly is: 'surely' | 'maybe';
  /** What hides it. */
  readonly instead: string;
};

/** What a text is: in the names of files words stand joined. */
export type TextKind = 'words' | 'fileName';

/** Finds a name in a text; nothing where the name is not hidden. */
export type NameFinder = (text: string, kind?: TextKind) => readonly NameSighting[];

const separator = "[\\s_.'·・-]*";
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
/** A folded form as a pattern, whatever joins its parts. */
const patternOf = (form: string): string =>
  form
    .split(/[^\p{L}\p{M}\p{N}]+/u)
    .filter((piece) => piece !== '')
    .map(escaped)
    .join(separator);

/** Finds the parts of a name that a mode hides, however they are spelled, and in whatever they are attached to. */
export function nameFinder(fullName: string, mode: NameMode): NameFinder {
  if (mode === 'full' || isNameless(fullName)) return () => [];
  const shown = shownName(fullName, mode);
  const whole = wholeName(fullName, shown);
  const searches = hiddenParts(fullName, mode, shown).map(searchFor);
  return (text, kind = 'words') => {
    const place = placeOf(text, kind);
    return withoutOverlaps([
      ...whole(place),
      ...searches.flatMap(({ instead, search }) => search(place).map((found) => ({ ...found, instead }))),
    ]);
  };
}

type Found = Omit<NameSighting, 'instead'>;
type HiddenPart = { readonly part: NamePart; readonly instead: string };

function hiddenParts(fullName: string, mode: NameMode, shown: string): readonly HiddenPart[] {
  const parts = partsOfName(fullName);
  if (mode !== 'first') {
    return parts.map((part) => ({ part, instead: mode === 'none' ? nobody : initial(part.written) }));
  }
  const shows = new Set(partsOfName(shown).flatMap(({ forms }) => forms));
  const isWhole = ({ written }: NamePart): boolean => written.normalize('NFC').endsWith(shown);
  return parts
    .filter(({ forms }) => !forms.some((form) => shows.has(form)))
    .map((part) => ({ part, instead: isWhole(part) ? shown : initial(part.written) }));
}

function searchFor({ part, instead }: HiddenPart) {
  const patterns = part.forms.map((form) => ({ form, pattern: new RegExp(patternOf(form), 'gu') }));
  const among = part.writing === 'unspaced' ? amongUnspaced : amongWords;
  const stems =
    part.tells === 'small' || part.tells === 'short'
      ? []
      : part.forms
          .flatMap((form) => stemsOf(part.writing, form))
          .map((form) => ({ form, pattern: new RegExp(escaped(form), 'gu') }));
  const search = (place: Place): readonly Found[] => [...among(part, patterns, place), ...inCases(part, stems, place)];
  return { instead, search };
}

/** A text as it is searched. */
type Place = {
  readonly text: string;
  readonly folded: Folded;
  readonly kind: TextKind;
  /** Where words begin and end in scripts without spaces, by their dictionaries. */
  readonly wordEdges: () => ReadonlySet<number>;
};

const words = new Intl.Segmenter('und', { granularity: 'word' });

function placeOf(text: string, kind: TextKind): Place {
  let edges: ReadonlySet<number> | null = null;
  const wordEdges = () => {
    edges ??= new Set([...words.segment(text)].map(({ index }) => index).concat(text.length));
    return edges;
  };
  return { text, folded: fold(text), kind, wordEdges };
}

type Match = { readonly from: number; readonly to: number; readonly start: number; readonly end: number };

/** Where a pattern stands from one whole character to another. */
function* matches({ folded }: Place, pattern: RegExp): Generator<Match> {
  for (const found of folded.text.matchAll(pattern)) {
    const [from, to] = [found.index, found.index + found[0].length];
    if (!folded.edges.has(from) || !folded.edges.has(to)) continue;
    yield { from, to, start: folded.starts[from] ?? 0, end: folded.starts[to] ?? 0 };
  }
}

/** The letters of the same word before and after; where a small letter meets a capital, words are joined ("AnnaSquat"). */
function attachedTo({ text, folded }: Place, { from, to, start, end }: Match, writing: NamePart['writing']) {
  const isSame = (letter: string | undefined): boolean =>
    letter !== undefined && /[\p{L}\p{M}]/u.test(letter) && (/\p{M}/u.test(letter) || writingOf(letter) === writing);
  let first = from;
  while (first > 0 && isSame(folded.text[first - 1])) first -= 1;
  let last = to;
  while (last < folded.text.length && isSame(folded.text[last])) last += 1;
  const joins = (at: number): boolean => /\p{Ll}\p{M}*$/u.test(text.slice(0, at)) && /^\p{Lu}/u.test(text.slice(at));
  return {
    before: joins(start) ? '' : folded.text.slice(first, from),
    after: joins(end) ? '' : folded.text.slice(to, last),
    first: folded.starts[first] ?? 0,
    last: folded.starts[last] ?? text.length,
  };
}

/** The whole name, its words in order; nothing of a name of one word, which is a part like others. */
function wholeName(fullName: string, shown: string): (place: Place) => readonly NameSighting[] {
  const written = wordsOf(fullName);
  const forms = written.map((word) => patternOf(fold(word).text)).filter((form) => form !== '');
  if (forms.length < 2) return () => [];
  const pattern = new RegExp(forms.join(separator), 'gu');
  const letters = forms.join('').replaceAll(separator, '').length;
  const writing = writingOf(written[0]?.match(/\p{L}/u)?.[0] ?? '');
  return (place) =>
    [...matches(place, pattern)].flatMap((match): NameSighting[] => {
      const { before, after } = attachedTo(place, match, writing);
      const isAlone = before === '' && (after === '' || after === 's');
      if (!isAlone && letters < 6 && writing !== 'unspaced') return [];
      return [{ start: match.start, end: match.end, is: 'surely', instead: shown }];
    });
}

type Patterns = readonly { readonly form: string; readonly pattern: RegExp }[];

function amongWords(part: NamePart, patterns: Patterns, place: Place): readonly Found[] {
  const { text, kind } = place;
  return patterns.flatMap(({ form, pattern }) =>
    [...matches(place, pattern)].flatMap((match): Found[] => {
      const { start, end } = match;
      const attached = attachedTo(place, match, part.writing);
      const isCapital = !hasCapitals(part.writing) || /^\p{Lu}/u.test(text.slice(start));
      const isAlone = attached.before === '' && attached.after === '';
      const isGenitive = part.writing === 'latin' && attached.before === '' && attached.after === 's';
      const isJoined = kind === 'fileName' || /[@#]$/u.test(text.slice(0, attached.first));
      if (isJoined && !isAlone && !isGenitive && form.length >= 4) return [{ start, end, is: 'maybe' }];
      const looks = isCapital ? 'name' : 'word';
      const ends = endsHere(part.writing, form, attached, looks);
      if (ends === null) return [];
      if (part.tells === 'small' && !(isCapital && isAlone)) return [];
      if (part.tells === 'short') {
        const isLetter = [...form].length === 1;
        if (!(isAlone || part.writing !== 'latin' || isCapital) || (isLetter && !(isAlone && isCapital))) return [];
      }
      const word = place.folded.text.slice(match.from, match.to);
      const isWordToo = part.forms.some(isOrdinary) || isOrdinary(`${word}${attached.after}`);
      // A short word without its accents, in small letters, is often another: "bao", "Bảo".
      const isOther = !isCapital && form.length <= 4 && !isSpelledAs(part, text.slice(start, end));
      const isClear = ends === 'surely' && part.tells === 'surely' && !isWordToo && !isOther;
      // Of another case of the name no ending is left.
      if (ends === 'maybe') return [{ start: attached.first, end: attached.last, is: 'maybe' }];
      return [{ start, end, is: isClear ? 'surely' : 'maybe' }];
    }),
  );
}

const isSpelledAs = ({ written }: NamePart, word: string): boolean =>
  written.normalize('NFC').toLowerCase() === word.normalize('NFC').toLowerCase();

/** Other cases of a name, whose ending is not the name's own. */
function inCases({ writing }: NamePart, stems: Patterns, place: Place): readonly Found[] {
  return stems.flatMap(({ form: stem, pattern }) =>
    [...matches(place, pattern)].flatMap((match): Found[] => {
      const attached = attachedTo(place, match, writing);
      const looksSo = /^\p{Lu}/u.test(place.text.slice(match.start)) || (writing !== 'latin' && stem.length >= 4);
      if (!looksSo || !isCaseOf(writing, stem, attached)) return [];
      return [{ start: attached.first, end: attached.last, is: 'maybe' }];
    }),
  );
}

/** How long a name without spaces is when no other word holds it by chance, in letters. */
const tellingLength = (part: string): number => (/[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}]/u.test(part) ? 3 : 5);

function amongUnspaced(part: NamePart, patterns: Patterns, place: Place): readonly Found[] {
  const { text, wordEdges } = place;
  const written = part.written.normalize('NFKC');
  return patterns.flatMap(({ form, pattern }) =>
    [...matches(place, pattern)].flatMap((match): Found[] => {
      const { start, end } = match;
      const isWord = wordEdges().has(start) && wordEdges().has(end);
      const addressed = isAddressed(text.slice(0, start), text.slice(end));
      if (part.tells === 'short') return isWord || addressed ? [{ start, end, is: 'maybe' }] : [];
      const isLikely = isWord || addressed || [...form].length >= tellingLength(form);
      // The same sounds in other kana may be a word: "アンナ", "あんな".
      const isClear = isLikely && part.tells === 'surely' && text.slice(start, end).normalize('NFKC') === written;
      return [{ start, end, is: isClear && !part.forms.some(isOrdinary) ? 'surely' : 'maybe' }];
    }),
  );
}

/** The surest at each place; of equally sure ones the longest. */
function withoutOverlaps(found: readonly NameSighting[]): readonly NameSighting[] {
  const rank = ({ start, end, is }: NameSighting): number => end - start + (is === 'surely' ? 1_000_000 : 0);
  const kept: NameSighting[] = [];
  for (const one of [...found].sort((a, b) => rank(b) - rank(a) || a.start - b.start)) {
    if (one.end > one.start && !kept.some(({ start, end }) => one.start < end && start < one.end)) kept.push(one);
  }
  return kept.sort((a, b) => a.start - b.start);
}
