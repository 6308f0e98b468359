import { mirrored } from '../../lettering/writingOrder.ts';

type Pdf = PDFKit.PDFDocument;

type Glyph = { readonly id: number; readonly codePoints: readonly number[]; readonly advanceWidth: number };
type Layout = {
  readonly glyphs: readonly Glyph[];
  readonly positions: readonly unknown[];
  readonly advanceWidth: number;
};

/** A font that pdfkit has open. */
type PdfkitFont = {
  readonly font: {
    readonly hasGlyphForCodePoint: (codePoint: number) => boolean;
    getGlyph: (id: number, codePoints?: readonly number[]) => Glyph;
  };
  readonly scale: number;
  layout: (text: string, features?: readonly string[], onlyWidth?: boolean) => Layout;
  /** The glyphs that go into the file, by their numbers there. */
  readonly subset: { readonly glyphs: number[] };
  readonly widths: number[];
  /** What each glyph of the file says. */
  readonly unicode: (readonly number[])[];
  encode: (text: string, features?: readonly string[]) => readonly [hex: string[], positions: readonly unknown[]];
};

export type OpenFont = { readonly has: (codePoint: number) => boolean };

/** What marks a text that runs from right to left (OpenType, feature "rtlm"). */
export const fromRightFeature = 'rtlm';

/** Opens a registered font. pdfkit doesn't publish which characters a font has, and reading the file twice would. */
export function openFont(pdf: Pdf, name: string): OpenFont {
  const { _font: pdfkit } = pdf.font(name) as unknown as { readonly _font: PdfkitFont };
  tellAsRead(pdfkit);
  return { has: (codePoint) => pdfkit.font.hasGlyphForCodePoint(codePoint) };
}

const asRead = (codePoint: number): number => mirrored(String.fromCodePoint(codePoint)).codePointAt(0) ?? codePoint;

/**
 * Makes a font say what is read where it sets text from right to left (ISO 32000-1, 9.10.3). Letters of Arabic share shapes,
 * and a bracket is drawn as its counterpart: each meaning of a shape becomes a glyph of the file. Readers take the shapes
 * from left to right and turn their letters round, those within one shape as well.
 */
function tellAsRead(pdfkit: PdfkitFont): void {
  const { font } = pdfkit;
  const numbers = new Map<string, number>();
  const numberOf = ({ id, codePoints, advanceWidth }: Glyph): number => {
    const said = codePoints.map(asRead).reverse();
    const key = `${id} ${said.join(' ')}`;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    const number = pdfkit.subset.glyphs.push(id) - 1;
    pdfkit.widths[number] = advanceWidth * pdfkit.scale;
    pdfkit.unicode[number] = said;
    numbers.set(key, number);
    return number;
  };
  const [encode, layout] = [pdfkit.encode.bind(pdfkit), pdfkit.layout.bind(pdfkit)];
  const getGlyph = font.getGlyph.bind(font);
  const said = new Map<string, Glyph>();
  /** The font keeps each shape with the letter that it met it in first. */
  const getMeant: typeof getGlyph = (id, codePoints = []) => {
    const key = `${id} ${codePoints.join(' ')}`;
    const known: Glyph = said.get(key) ?? Object.create(getGlyph(id), { codePoints: { value: codePoints } });
    said.set(key, known);
    return known;
  };
  const laidOut = new Map<string, Layout>();
  const isFromRight = (features?: readonly string[]) => features?.includes(fromRightFeature) === true;
  pdfkit.layout = (text, features, onlyWidth) => {
    if (!isFromRight(features)) return layout(text, features, onlyWidth);
    const known = laidOut.get(text);
    if (known !== undefined) return known;
    font.getGlyph = getMeant;
    const laid = layout(text, features);
    font.getGlyph = getGlyph;
    laidOut.set(text, laid);
    return laid;
  };
  pdfkit.encode = (text, features) => {
    if (!isFromRight(features)) return encode(text, features);
    const { glyphs, positions } = pdfkit.layout(text, features);
    return [glyphs.map((glyph) => numberOf(glyph).toString(16).padStart(4, '0')), positions];
  };
}
