import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { EastAsianFont, EastAsianWeight } from '../../lettering/eastAsianFonts.ts';

/** The faces a document is set in. */
export type Face = 'regular' | 'strong' | 'emphasis' | 'figures';

export const faces = ['regular', 'strong', 'emphasis', 'figures'] as const satisfies readonly Face[];

/** A font that is to be registered under a name. */
export type FontFile = { readonly name: string; readonly bytes: () => Buffer };

/** From the package, wherever this file runs: source or bundle. */
const packages = createRequire(import.meta.url);

/** The .woff files: the subsetter can't cut down the transformed glyphs of .woff2. */
const fontFile = (face: Face, family: string, subset: string, style: string): FontFile => ({
  name: `${face}-${subset}`,
  bytes: () => readFileSync(packages.resolve(`@fontsource/${family}/files/${family}-${subset}-${style}.woff`)),
});

const ownStyles: Readonly<Record<Face, readonly [family: string, style: string]>> = {
  regular: ['atkinson-hyperlegible-next', '400-normal'],
  strong: ['atkinson-hyperlegible-next', '700-normal'],
  emphasis: ['atkinson-hyperlegible-next', '400-italic'],
  figures: ['atkinson-hyperlegible-mono', '400-normal'],
};
const ownSubsets = ['latin', 'latin-ext'] as const;

/** The files of a face itself. */
export function ownFiles(face: Face): readonly FontFile[] {
  const [family, style] = ownStyles[face];
  return ownSubsets.map((subset) => fontFile(face, family, subset, style));
}

/** Of scripts that have no italics. */
const upright: Readonly<Record<Face, string>> = {
  regular: '400-normal',
  strong: '700-normal',
  emphasis: '400-normal',
  figures: '400-normal',
};

/** What sets the letters that the faces lack: those of names and notes in other scripts. */
const others: readonly {
  readonly script: RegExp;
  readonly family: string;
  readonly subsets: readonly string[];
  readonly styles: Readonly<Record<Face, string>>;
}[] = [
  {
    script: /[\p{Script=Cyrillic}\p{Script=Greek}\p{Script=Latin}\p{Script=Devanagari}]/u,
    family: 'noto-sans',
    subsets: ['cyrillic', 'cyrillic-ext', 'greek', 'greek-ext', 'vietnamese', 'devanagari'],
    styles: { regular: '400-normal', strong: '700-normal', emphasis: '400-italic', figures: '400-normal' },
  },
  // One glyph to a letter, where others put letters together from parts that say nothing when they are copied.
  { script: /[\p{Script=Arabic}\u0600-\u06FF]/u, family: 'ibm-plex-sans-arabic', subsets: ['arabic'], styles: upright },
  { script: /\p{Script=Hebrew}/u, family: 'noto-sans-hebrew', subsets: ['hebrew'], styles: upright },
];

/** The files that may set characters which a face lacks. */
export function otherFiles(face: Face, characters: string): readonly FontFile[] {
  const found = others.find(({ script }) => script.test(characters));
  return found === undefined
    ? []
    : found.subsets.map((subset) => fontFile(face, found.family, subset, found.styles[face]));
}

const weightOf = (face: Face): EastAsianWeight => (face === 'strong' ? 700 : 400);

/** The opened font that sets Chinese, Japanese or Korean characters in a face. */
export function eastAsianFile(face: Face, characters: string, fonts: readonly EastAsianFont[]): FontFile | undefined {
  const weight = weightOf(face);
  const found = fonts.find(
    (font) => font.weight === weight && [...characters].every((one) => font.characters.has(one)),
  );
  return found && { name: `${found.name}-${weight}`, bytes: () => found.bytes };
}
