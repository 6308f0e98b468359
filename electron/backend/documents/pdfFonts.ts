import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

type Pdf = PDFKit.PDFDocument;

/** The faces a document is set in. */
export type Face = 'regular' | 'strong' | 'emphasis' | 'figures';

/** A stretch of text that one font can set; `actual` is the text itself where readers can't tell it from what is drawn. */
export type Run = { readonly font: string; readonly text: string; readonly actual: string | null };

export type Faces = {
  /** Cuts text into stretches of one font each; characters that no font has become one box a grapheme. */
  readonly runs: (text: string, face: Face) => Run[];
  /** Width in points. */
  readonly width: (run: Run, size: number) => number;
};

const files: Readonly<Record<Face, readonly [family: string, style: string]>> = {
  regular: ['next', '400-normal'],
  strong: ['next', '700-normal'],
  emphasis: ['next', '400-italic'],
  figures: ['mono', '400-normal'],
};
const subsets = ['latin', 'latin-ext'] as const;

/** What sets the letters that the faces lack: those of names and notes in other scripts written from left to right. */
const others: Readonly<Record<Face, string>> = {
  regular: '400-normal',
  strong: '700-normal',
  emphasis: '400-italic',
  figures: '400-normal',
};
const otherSubsets = ['cyrillic', 'cyrillic-ext', 'greek', 'greek-ext', 'vietnamese', 'devanagari'] as const;

/** From the package, wherever this file runs: source or bundle. */
const packages = createRequire(import.meta.url);

/** The .woff files: the subsetter can't cut down the transformed glyphs of .woff2. */
const fontFile = (name: string, subset: string, style: string): Buffer => {
  return readFileSync(packages.resolve(`@fontsource/${name}/files/${name}-${subset}-${style}.woff`));
};

/** The font that pdfkit has open; it doesn't publish which characters a font has, and reading the file twice would. */
function covers(pdf: Pdf, font: string): (codePoint: number) => boolean {
  const opened = pdf.font(font) as unknown as {
    readonly _font: { readonly font: { readonly hasGlyphForCodePoint: (codePoint: number) => boolean } };
  };
  const { font: open } = opened._font;
  return (codePoint) => open.hasGlyphForCodePoint(codePoint);
}

/** What a font draws as its box for a missing character. */
const box = '\uFFFD';

/** Thin spaces and line ends as the spaces that the fonts have; no controls. */
const settable = (text: string): string =>
  text
    .toWellFormed()
    .normalize('NFC')
    .replace(/[\u202F\u2007-\u200A]/g, '\u00A0')
    .replace(/\s/g, (space) => (space === '\u00A0' ? space : ' '))
    .replace(/\p{Cc}/gu, '');

/** Marks that only steer others: joiners, variation selectors, directions. */
const unseen = /\p{Default_Ignorable_Code_Point}/gu;

const inOtherScripts = /[\p{Script=Cyrillic}\p{Script=Greek}\p{Script=Latin}\p{Script=Devanagari}]/u;

/** Scripts whose letters the fonts put in another order, so that the text has to stand behind them. */
const reordered = /\p{Script=Devanagari}/u;

type Opened = { readonly font: string; readonly has: (codePoint: number) => boolean };

/** Registers the faces with a document. */
export function registerFaces(pdf: Pdf): Faces {
  const fonts = new Map<Face, readonly Opened[]>();
  for (const [face, [family, style]] of Object.entries(files) as [Face, readonly [string, string]][]) {
    const opened = subsets.map((subset) => {
      const font = `${face}-${subset}`;
      pdf.registerFont(font, fontFile(`atkinson-hyperlegible-${family}`, subset, style));
      return { font, has: covers(pdf, font) };
    });
    fonts.set(face, opened);
  }
  const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });
  /** Opened only for words that need them: most documents don't. */
  const openedLate = new Map<Face, readonly Opened[]>();
  const othersOf = (face: Face): readonly Opened[] => {
    const known = openedLate.get(face);
    if (known !== undefined) return known;
    const made = otherSubsets.map((subset): Opened => {
      const font = `${face}-${subset}`;
      pdf.registerFont(font, fontFile('noto-sans', subset, others[face]));
      return { font, has: covers(pdf, font) };
    });
    openedLate.set(face, made);
    return made;
  };
  const setIn = (grapheme: string, face: Face): Run[] => {
    const shown = grapheme.replace(unseen, '');
    if (shown === '') return [];
    const own = fonts.get(face) ?? [];
    const sets = ({ has }: Opened) => [...shown].every((character) => has(character.codePointAt(0) ?? 0));
    const found = own.find(sets);
    if (found !== undefined) return [{ font: found.font, text: shown, actual: null }];
    const other = inOtherScripts.test(shown) ? othersOf(face).find(sets) : undefined;
    if (other !== undefined) return [{ font: other.font, text: shown, actual: reordered.test(shown) ? shown : null }];
    return [{ font: `${face}-${subsets[0]}`, text: box, actual: grapheme }];
  };
  const addTo = (runs: Run[], next: Run): Run[] => {
    const last = runs.at(-1);
    if (last === undefined || last.font !== next.font || (last.actual === null) !== (next.actual === null)) {
      runs.push(next);
      return runs;
    }
    const actual = last.actual === null || next.actual === null ? null : last.actual + next.actual;
    runs[runs.length - 1] = { font: last.font, text: last.text + next.text, actual };
    return runs;
  };
  return {
    runs: (text, face) =>
      [...graphemes.segment(settable(text))].flatMap(({ segment }) => setIn(segment, face)).reduce<Run[]>(addTo, []),
    width: (run, size) => pdf.font(run.font).fontSize(size).widthOfString(run.text),
  };
}
