import { kgPerLb, type LoadUnits, loadIn } from '../../engine/review/load.ts';
import { shownCoefficient, shownGain, shownPercent, shownScore } from '../../engine/rubric/shownNumbers.ts';

const wholeAndTenth = new Intl.NumberFormat('en', { minimumFractionDigits: 1, maximumFractionDigits: 1 });
const upToTwo = new Intl.NumberFormat('en', { maximumFractionDigits: 2 });
const percent = new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0 });
const longDate = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });
const longDateHere = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

/** Points of a score: "83.4", never rounded up into the next letter. */
export const points = (score: number): string => wholeAndTenth.format(shownScore(score));
/** What a grade would gain: "1.9", never rounded up. */
export const gain = (difference: number): string => wholeAndTenth.format(shownGain(difference, 1));
/** A plain number: "2.5", "80". */
export const plain = (value: number): string => upToTwo.format(value);
/** A share of 1: "83%", never rounded up. */
export const share = (value: number): string => percent.format(shownPercent(value) / 100);
/** A share of 1 of agreement: to the nearest, and "100%" only where it is complete. */
export const agreedShare = (value: number): string => percent.format(shownCoefficient(value, 2));
/** An ISO date: "8 Nov 2025". */
export const day = (isoDate: string): string => {
  const date = new Date(`${isoDate.slice(0, 10)}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? isoDate : longDate.format(date);
};
/** The day of an instant, where the reader is: "8 Nov 2025". */
export const dayOf = (isoTime: string): string => longDateHere.format(new Date(isoTime));
/** "1 clip", "2 clips". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** A load in the trainee's units: "80 kg", "135 lb". */
export const loadWords = (loadKg: number, units: LoadUnits): string => `${plain(loadIn(units, loadKg))} ${units}`;
/** An estimated load in the trainee's units, to the whole kilogram or pound: "75 kg", "165 lb". */
export const estimatedLoadWords = (loadKg: number, units: LoadUnits): string =>
  `${Math.round(units === 'kg' ? loadKg : loadKg / kgPerLb)} ${units}`;
