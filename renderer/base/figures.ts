import { type Language, localeOf } from '../../engine/language/language.ts';
import { kgPerLb, type LoadUnits, loadIn } from '../../engine/review/load.ts';
import { shownCoefficient, shownGain, shownPercent, shownScore } from '../../engine/rubric/shownNumbers.ts';
import { formatClock } from '../../engine/time/writtenTime.ts';
import { deskLanguage } from '../words/deskLanguage.ts';

/** How one language writes numbers and days. */
function formatsIn(locale: string) {
  const dated = { day: 'numeric', month: 'short', year: 'numeric' } as const;
  return {
    toTenth: new Intl.NumberFormat(locale, { minimumFractionDigits: 1, maximumFractionDigits: 1 }),
    twoDecimals: new Intl.NumberFormat(locale, {
      minimumFractionDigits: 2,
      maximumFractionDigits: 2,
      signDisplay: 'negative',
    }),
    upToTwo: new Intl.NumberFormat(locale, { maximumFractionDigits: 2 }),
    percent: new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 }),
    day: new Intl.DateTimeFormat(locale, { ...dated, timeZone: 'UTC' }),
    dayHere: new Intl.DateTimeFormat(locale, dated),
    momentHere: new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }),
    secondHere: new Intl.DateTimeFormat(locale, { dateStyle: 'short', timeStyle: 'medium' }),
    decimalSign: new Intl.NumberFormat(locale).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ?? '.',
  };
}

const formats: Readonly<Record<Language, ReturnType<typeof formatsIn>>> = {
  en: formatsIn(localeOf.en),
  de: formatsIn(localeOf.de),
};

/** The formats of the desk's language as it is now. */
const here = (): ReturnType<typeof formatsIn> => formats[deskLanguage.getState().language];

/** Points of a score: "83.4" (German "83,4"), never rounded up into the next mark. */
export const points = (score: number): string => here().toTenth.format(shownScore(score));
/** What a grade would gain: "1.9", never rounded up. */
export const gain = (difference: number): string => here().toTenth.format(shownGain(difference, 1));
/** A plain number: "2.5", "80". */
export const plain = (value: number): string => here().upToTwo.format(value);
/** A share of 1: "83%" (German "83 %"), never rounded up. */
export const share = (value: number): string => here().percent.format(shownPercent(value) / 100);
/** A share of 1 of agreement: to the nearest, and "100%" only where it is complete. */
export const agreedShare = (value: number): string => here().percent.format(shownCoefficient(value, 2));
/** A number with two decimals and a real minus: "0.82", "−0.10" (German "0,82"). */
export const toHundredth = (value: number): string => here().twoDecimals.format(value).replace('-', '−');
/** An ISO date: "8 Nov 2025" (German "8. Nov. 2025"). */
export const day = (isoDate: string): string => {
  const date = new Date(`${isoDate.slice(0, 10)}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? isoDate : here().day.format(date);
};
/** The day of an instant, where the reader is: "8 Nov 2025". */
export const dayOf = (isoTime: string): string => here().dayHere.format(new Date(isoTime));
/** An instant, where the reader is: "8 Nov 2025, 14:05". */
export const momentOf = (isoTime: string): string => here().momentHere.format(new Date(isoTime));
/** A time of a clip in media microseconds: "0:07.133" (German "0:07,133"). */
export const clock = (us: number): string => formatClock(us).replace('.', here().decimalSign);
/** An instant to the second, where the reader is: "08/11/2025, 14:05:09". */
export const secondOf = (isoTime: string): string => here().secondHere.format(new Date(isoTime));

/** A load in the trainee's units: "80 kg", "135 lb". */
export const loadWords = (loadKg: number, units: LoadUnits): string => `${plain(loadIn(units, loadKg))} ${units}`;
/** An estimated load in the trainee's units, to the whole kilogram or pound: "75 kg", "165 lb". */
export const estimatedLoadWords = (loadKg: number, units: LoadUnits): string =>
  `${Math.round(units === 'kg' ? loadKg : loadKg / kgPerLb)} ${units}`;
