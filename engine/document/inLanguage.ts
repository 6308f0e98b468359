import { type LoadUnits, loadIn } from '../review/load.ts';
import { shownGain, shownPercent, shownScore } from '../rubric/shownNumbers.ts';
import { formatClock, formatSecondsClock } from '../time/writtenTime.ts';

/** How one language writes numbers, loads, lists, dates and counts. */
export type InLanguage = {
  /** A score: one decimal at most, never rounded up into the next grade. */
  readonly score: (points: number) => string;
  /** What a score would gain, to one decimal, never rounded up. */
  readonly points: (points: number) => string;
  /** The same to two decimals. */
  readonly exactPoints: (points: number) => string;
  /** A share, 0-1, in whole per cent, never rounded up. */
  readonly percent: (share: number) => string;
  readonly whole: (count: number) => string;
  /** A load, given in kilograms: "62.5 kg", "135 lb". */
  readonly load: (kilograms: number, units: LoadUnits) => string;
  /** "a, b and c". */
  readonly list: (items: readonly string[]) => string;
  /** A list of objects: they come back with the words between them. */
  readonly listed: <Item extends object>(items: readonly Item[]) => (Item | string)[];
  /** An ISO date in words. */
  readonly date: (iso: string) => string;
  /** A time of a clip, in media microseconds: m:ss and thousandths. */
  readonly clock: (us: number) => string;
  /** A time of a clip as a player shows it: m:ss, the second it falls in. */
  readonly secondsClock: (us: number) => string;
  readonly plural: (count: number) => Intl.LDMLPluralRule;
};

/** Formats for a locale; the same everywhere, since the locale and the time zone are given, never taken from the machine. */
export function inLanguage(locale: string): InLanguage {
  const score = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
  const points = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
  const exactPoints = new Intl.NumberFormat(locale, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
  const percent = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 });
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
  const list = new Intl.ListFormat(locale, { style: 'long', type: 'conjunction' });
  const date = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
  const decimal = points.formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ?? '.';
  const plural = new Intl.PluralRules(locale);
  return {
    score: (value) => score.format(shownScore(value)),
    points: (value) => points.format(shownGain(value, 1)),
    exactPoints: (value) => exactPoints.format(shownGain(value, 2)),
    percent: (value) => percent.format(shownPercent(value) / 100),
    whole: (value) => whole.format(value),
    load: (kilograms, units) => {
      const unit = { kg: 'kilogram', lb: 'pound' }[units];
      const format = new Intl.NumberFormat(locale, { style: 'unit', unit, maximumFractionDigits: 2 });
      return format.format(loadIn(units, kilograms));
    },
    list: (items) => list.format(items),
    listed: (items) =>
      list
        .formatToParts(items.map((_, index) => String(index)))
        .map(({ type, value }) => (type === 'element' ? (items[Number(value)] ?? value) : value)),
    date: (iso) => date.format(new Date(`${iso}T00:00:00Z`)),
    clock: (us) => formatClock(us).replace('.', decimal),
    secondsClock: (us) => formatSecondsClock(us),
    plural: (count) => plural.select(count),
  };
}
