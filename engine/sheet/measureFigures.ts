import { type Language, languages, localeOf } from '../language/language.ts';
import type { Measured, RepMeasurement } from '../motion/measurement.ts';
import type { SheetLanguage } from './sheetLanguage.ts';

/** How a measure is printed: factor from its unit to the printed one, and decimals. */
type Print = { readonly perUnit: number; readonly digits: 0 | 1 | 2 };

export const seconds: Print = { perUnit: 1, digits: 2 };
export const centimetres: Print = { perUnit: 100, digits: 1 };
export const metresPerSecond: Print = { perUnit: 1, digits: 2 };
export const percent: Print = { perUnit: 1, digits: 0 };

/** Made once: a sheet prints many figures. */
const formats = new Map(
  languages.map((language): [Language, readonly Intl.NumberFormat[]] => [
    language,
    [0, 1, 2].map(
      (digits) =>
        new Intl.NumberFormat(localeOf[language], {
          minimumFractionDigits: digits,
          maximumFractionDigits: digits,
          signDisplay: 'negative',
        }),
    ),
  ]),
);

const decimal = (value: number, digits: number, language: Language): string =>
  (formats.get(language)?.[digits]?.format(value) ?? String(value)).replace('-', '−');

/** "54.8 ± 1.1"; the half-width is rounded up, so that it never reads as nothing. */
export function figure({ value, plusMinus }: Measured, { perUnit, digits }: Print, language: Language): string {
  const least = 10 ** -digits;
  const margin = Math.max(least, Math.ceil((plusMinus * perUnit) / least - 1e-9) * least);
  return `${decimal(value * perUnit, digits, language)}\u00A0±\u00A0${decimal(margin, digits, language)}`;
}

/** How deep a rep went: "reached, 4.3 ± 1.2 cm below"; null where it was not measured. */
export function depthWords({ joints }: RepMeasurement, { say, language }: SheetLanguage): string | null {
  if (joints?.depthOutcome == null) return null;
  const outcome = say('depthOutcome', { outcome: joints.depthOutcome });
  const { depthM } = joints;
  if (depthM === null) return outcome;
  const value = figure({ ...depthM, value: Math.abs(depthM.value) }, centimetres, language);
  return say(depthM.value < 0 ? 'depthBelow' : 'depthAbove', { outcome, value });
}
