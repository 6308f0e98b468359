import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** From the package, wherever this file runs: source or bundle. */
const packages = createRequire(import.meta.url);

const text = 'Atkinson Hyperlegible Next';
const figures = 'Atkinson Hyperlegible Mono';

type Face = { readonly family: string; readonly weight: 400 | 700; readonly style: 'normal' | 'italic' };

/** The faces that a PDF is set in too. */
const faces: readonly Face[] = [
  { family: text, weight: 400, style: 'normal' },
  { family: text, weight: 700, style: 'normal' },
  { family: text, weight: 400, style: 'italic' },
  { family: figures, weight: 400, style: 'normal' },
];

/** Letters with marks that Western European languages lack (Unicode blocks Latin Extended-A, -B and Additional). */
const extended = /[\u0100-\u024F\u1E00-\u1EFF]/;

function ruleOf({ family, weight, style }: Face, subset: 'latin' | 'latin-ext'): string {
  const name = family.toLowerCase().replaceAll(' ', '-');
  const file = packages.resolve(`@fontsource/${name}/files/${name}-${subset}-${weight}-${style}.woff2`);
  const source = `url(data:font/woff2;base64,${readFileSync(file).toString('base64')}) format("woff2")`;
  const range = subset === 'latin' ? '' : ' unicode-range: U+0100-024F, U+1E00-1EFF;';
  return `@font-face { font-family: "${family}"; font-weight: ${weight}; font-style: ${style}; src: ${source};${range} }\n`;
}

const made = new Map<'latin' | 'latin-ext', string>();

function rulesOf(subset: 'latin' | 'latin-ext'): string {
  const known = made.get(subset) ?? faces.map((face) => ruleOf(face, subset)).join('');
  made.set(subset, known);
  return known;
}

/**
 * Style rules of the faces that a page with these words is set in, their files inside, so that it looks on any device as
 * it does in a PDF. Other scripts than Latin are left to the device.
 */
export const htmlFaces = (words: string): string =>
  `${rulesOf('latin')}${extended.test(words) ? rulesOf('latin-ext') : ''}`;
