import { type Language, localeOf } from '../../engine/language/language.ts';
import type { DepthOutcome, Measured, PhaseName } from '../../engine/motion/measurement.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayMeasures } from '../words/sayMeasures.ts';

/** The phases in the order in which a tempo is written. */
export const phaseNames: readonly PhaseName[] = ['eccentric', 'pauseStretched', 'concentric', 'pauseShortened'];

/** A phase inside a sentence: "pause, stretched". */
export const phaseWords = (phase: PhaseName): string => sayMeasures('inWords', { phase });

const formatsOf = (locale: string): readonly Intl.NumberFormat[] =>
  [0, 1, 2, 3].map(
    (digits) => new Intl.NumberFormat(locale, { minimumFractionDigits: digits, maximumFractionDigits: digits }),
  );

const formats: Readonly<Record<Language, readonly Intl.NumberFormat[]>> = {
  en: formatsOf(localeOf.en),
  de: formatsOf(localeOf.de),
};

/** A number with a fixed count of decimals as the desk's language writes it, a real minus sign, and no minus before zero. */
export function decimal(value: number, digits: 0 | 1 | 2 | 3): string {
  const text = formats[deskLanguage.getState().language][digits]?.format(value) ?? '';
  return /^-[0.,]*$/.test(text) ? text.slice(1) : text.replace('-', '−');
}

/** A value with the half-width of its interval, in the same unit and decimals; the half-width never reads as zero. */
export type Figure = { readonly value: string; readonly margin: string };

const inUnit =
  (perUnit: number, digits: 0 | 1 | 2 | 3) =>
  ({ value, plusMinus }: Measured): Figure => {
    const least = 10 ** -digits;
    return {
      value: decimal(value * perUnit, digits),
      margin: decimal(Math.max(least, Math.ceil((plusMinus * perUnit) / least - 1e-9) * least), digits),
    };
  };

export const inSeconds = inUnit(1, 2);
export const inCentimetres = inUnit(100, 1);
export const inMetresPerSecond = inUnit(1, 2);

/** A figure that is "about" only: no finer than whole centimetres and tenths of a metre a second. */
const roughly =
  (print: (measured: Measured) => Figure) =>
  (measured: Measured): Figure => {
    const { value, margin } = print(measured);
    return { value: sayMeasures('about', { value }), margin };
  };

export const aboutCentimetres = roughly(inUnit(100, 0));
export const aboutMetresPerSecond = roughly(inUnit(1, 1));
export const inPercent = inUnit(1, 0);

/** A joint's angle, never finer than 10°: what a camera sees of a joint is no better. */
export function inTens({ value, plusMinus }: Measured): Figure {
  return {
    value: decimal(Math.round(value / 10) * 10, 0),
    margin: decimal(Math.max(10, Math.ceil(plusMinus / 10 - 1e-9) * 10), 0),
  };
}

export const figureWords = (figure: Figure): string => sayMeasures('figure', figure);

/** The depth of a rep: "reached, 4.3 ± 1.2 cm below". */
export function depthWords(outcome: DepthOutcome, depthM: Measured | null): string {
  if (depthM === null) return sayMeasures('depthReached', { outcome });
  const far = inCentimetres({ ...depthM, value: Math.abs(depthM.value) });
  return sayMeasures('depthBy', { outcome, ...far, side: depthM.value < 0 ? 'below' : 'above' });
}
