import type { EastAsianFont } from '../../lettering/eastAsianFonts.ts';
import { eastAsianFile, type Face, type FontFile, faces, otherFiles, ownFiles } from './fontFiles.ts';
import { fromRightFeature, openFont } from './openFont.ts';

type Pdf = PDFKit.PDFDocument;

/**
 * A stretch of text that one font can set, as it is read; `actual` is the text itself where readers can't tell it from what
 * is drawn. An odd level runs from right to left.
 */
export type Run = {
  readonly font: string;
  readonly text: string;
  readonly actual: string | null;
  readonly level: number;
};

export type Faces = {
  /** Cuts `settable` text of one level into stretches of one font each; characters that no font has become one box a grapheme. */
  readonly runs: (text: string, face: Face, level: number) => Run[];
  /** Width in points. */
  readonly width: (run: Run, size: number) => number;
};

/** What a font draws as its box for a missing character. */
const box = '\uFFFD';

/**
 * Thin spaces and line ends as the spaces that the fonts have; no controls, none that turn text round against its own
 * letters.
 */
export const settable = (text: string): string =>
  text
    .toWellFormed()
    .normalize('NFC')
    .replace(/[\u202F\u2007-\u200A]/g, '\u00A0')
    .replace(/\s/g, (space) => (space === '\u00A0' ? space : ' '))
    .replace(/[\p{Cc}\u202A-\u202E]/gu, '');

/** Marks that only steer others: joiners, variation selectors, directions. */
const unseen = /\p{Default_Ignorable_Code_Point}/gu;

/** The same without the joiners, which Arabic letters look at. */
const unseenInArabic = /(?![\u200C\u200D])\p{Default_Ignorable_Code_Point}/gu;

/** Scripts whose letters the fonts put in another order, so that the text has to stand behind them. */
const reordered = /\p{Script=Devanagari}/u;

const isArabic = (text: string): boolean => /\p{Script=Arabic}/u.test(text);

/** Whether the font itself sets a text from right to left: it goes by the first letter that has a script. */
export const runsFromRight = (text: string): boolean => /[\p{Script=Hebrew}\p{Script=Arabic}\u0660-\u0669]/u.test(text);

/** How pdfkit is to set text of a level. */
export const settingOf = (level: number): { features?: PDFKit.Mixins.OpenTypeFeatures[] } =>
  level % 2 === 0 ? {} : { features: [fromRightFeature] };

type Opened = { readonly font: string; readonly has: (codePoint: number) => boolean };

/** Registers the faces with a document; other scripts' fonts are opened only for words that need them. */
export function registerFaces(pdf: Pdf, eastAsian: readonly EastAsianFont[]): Faces {
  const openedFonts = new Map<string, Opened>();
  const open = ({ name, bytes }: FontFile): Opened => {
    const known = openedFonts.get(name);
    if (known !== undefined) return known;
    pdf.registerFont(name, bytes());
    const opened = { font: name, has: openFont(pdf, name).has };
    openedFonts.set(name, opened);
    return opened;
  };
  const own = new Map(faces.map((face) => [face, ownFiles(face).map(open)]));
  const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

  const fontFor = (shown: string, face: Face): string | null => {
    const drawn = shown.replace(unseen, '');
    const sets = ({ has }: Opened) => [...drawn].every((character) => has(character.codePointAt(0) ?? 0));
    const found = own.get(face)?.find(sets) ?? otherFiles(face, drawn).map(open).find(sets);
    if (found !== undefined) return found.font;
    const file = eastAsianFile(face, drawn, eastAsian);
    return file === undefined ? null : open(file).font;
  };
  const setIn = (grapheme: string, face: Face, level: number): Run[] => {
    const shown = grapheme.replace(isArabic(grapheme) ? unseenInArabic : unseen, '');
    if (shown === '') return [];
    const font = fontFor(shown, face);
    if (font !== null) return [{ font, text: shown, actual: reordered.test(shown) ? shown : null, level }];
    const plain = shown.normalize('NFKC');
    const plainFont = plain === shown ? null : fontFor(plain, face);
    if (plainFont !== null) return [{ font: plainFont, text: plain, actual: grapheme, level }];
    return [{ font: (own.get(face)?.[0] ?? { font: '' }).font, text: box, actual: grapheme, level }];
  };
  const addTo = (runs: Run[], next: Run): Run[] => {
    const last = runs.at(-1);
    if (last === undefined || last.font !== next.font || (last.actual === null) !== (next.actual === null)) {
      runs.push(next);
      return runs;
    }
    const actual = last.actual === null || next.actual === null ? null : last.actual + next.actual;
    runs[runs.length - 1] = { ...last, text: last.text + next.text, actual };
    return runs;
  };
  return {
    runs: (text, face, level) =>
      [...graphemes.segment(text)].flatMap(({ segment }) => setIn(segment, face, level)).reduce<Run[]>(addTo, []),
    width: ({ font, text, level }, size) => pdf.font(font).fontSize(size).widthOfString(text, settingOf(level)),
  };
}
