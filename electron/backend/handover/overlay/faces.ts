import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { GlobalFonts } from '@napi-rs/canvas';

/** From the package, wherever this file runs: source or bundle. */
const packages = createRequire(import.meta.url);

const subsets = ['latin', 'latin-ext'] as const;
const weights = [400, 700] as const;
const family = 'rackside-text';

/** The families to set text in: the app's own, then whatever the machine has for other scripts. */
const families = [...subsets.map((subset) => `"${family}-${subset}"`), 'sans-serif'].join(', ');

/** Makes the app's faces known to the drawing library; once is enough for the process. */
export function registerFaces(fonts: typeof GlobalFonts): void {
  for (const subset of subsets) {
    if (fonts.has(`${family}-${subset}`)) continue;
    for (const weight of weights) {
      const name = 'atkinson-hyperlegible-next';
      const file = packages.resolve(`@fontsource/${name}/files/${name}-${subset}-${weight}-normal.woff`);
      fonts.register(readFileSync(file), `${family}-${subset}`);
    }
  }
}

/** The face for a size in pixels, as a drawing context takes it. */
export const face = (sizePx: number, weight: (typeof weights)[number]): string =>
  `${weight} ${sizePx.toFixed(1)}px ${families}`;
