import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { GlobalFonts, SKRSContext2D } from '@napi-rs/canvas';
import { openEastAsianFonts } from '../../../lettering/eastAsianFonts.ts';

/** From the package, wherever this file runs: source or bundle. */
const packages = createRequire(import.meta.url);

type Weight = 400 | 700;
const weights = [400, 700] as const satisfies readonly Weight[];
const family = 'rackside-text';

/** The app's own faces, and what sets the letters that they lack, where words have any. */
const files = [
  { font: 'atkinson-hyperlegible-next', subset: 'latin', needed: /^/ },
  { font: 'atkinson-hyperlegible-next', subset: 'latin-ext', needed: /^/ },
  ...['cyrillic', 'cyrillic-ext', 'greek', 'greek-ext', 'vietnamese', 'devanagari'].map((subset) => ({
    ...{ font: 'noto-sans', subset },
    needed: /[\p{Script=Cyrillic}\p{Script=Greek}\p{Script=Devanagari}\u1E00-\u1EFF]|\p{M}/u,
  })),
  { font: 'ibm-plex-sans-arabic', subset: 'arabic', needed: /\p{Script_Extensions=Arabic}/u },
  { font: 'noto-sans-hebrew', subset: 'hebrew', needed: /\p{Script=Hebrew}/u },
] as const;

/** Registers a family once for the process. */
function add(fonts: typeof GlobalFonts, name: string, bytesOf: (weight: Weight) => Buffer): string {
  const own = `${family}-${name}`;
  if (!fonts.has(own)) for (const weight of weights) fonts.register(bytesOf(weight), own);
  return own;
}

/** The families that each pen sets text in. */
const familiesOf = new WeakMap<SKRSContext2D, readonly string[]>();

/**
 * Opens the faces that some words need for a pen; letters that they lack are drawn with what the machine has. What was opened
 * stays open for the process.
 */
export async function openFaces(pen: SKRSContext2D, fonts: typeof GlobalFonts, words: string): Promise<void> {
  const own = files
    .filter(({ needed }) => needed.test(words))
    .map(({ font, subset }) =>
      add(fonts, subset, (weight) =>
        readFileSync(packages.resolve(`@fontsource/${font}/files/${font}-${subset}-${weight}-normal.woff`)),
      ),
    );
  const eastAsian = await Promise.all(weights.map((weight) => openEastAsianFonts(words, weight)));
  const [light = [], bold = []] = eastAsian;
  const added = light.map(({ name, bytes }, index) =>
    add(fonts, name, (weight) => (weight === 400 ? bytes : (bold[index]?.bytes ?? bytes))),
  );
  familiesOf.set(pen, [...own, ...added]);
}

/** Takes up the pen's faces in a size in pixels. */
export function setFace(pen: SKRSContext2D, sizePx: number, weight: Weight): void {
  const families = (familiesOf.get(pen) ?? []).map((name) => `"${name}"`);
  pen.font = `${weight} ${sizePx.toFixed(1)}px ${[...families, 'sans-serif'].join(', ')}`;
}
