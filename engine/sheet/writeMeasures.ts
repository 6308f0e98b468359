import { type Block, type Inline, text } from '../document/document.ts';
import { sentence, tidy } from '../document/words.ts';
import { type Language, languages, localeOf } from '../language/language.ts';
import type { Measured, RepMeasurement, SetMeasurement } from '../motion/measurement.ts';
import { isOfBody } from '../motion/source/tracked.ts';
import type { LoadUnits } from '../review/load.ts';
import type { Entry } from '../review/review.ts';
import { clipLoadKg } from '../review/work.ts';
import { sayFollowed } from '../wording/sayFollowed.ts';
import { sayMeasuring } from '../wording/sayMeasuring.ts';
import { sayNotCounted } from '../wording/sayOffered.ts';
import type { SheetExtras } from './sheetExtras.ts';
import type { SheetLanguage } from './sheetLanguage.ts';

type Column = { readonly label: string; readonly cell: (rep: RepMeasurement) => string | null };

/** Shown where a rep lacks a measure. */
const none = '–';

function tempoColumns({ say, language }: SheetLanguage): Column[] {
  const time = (measured: Measured | null) => (measured === null ? null : figure(measured, seconds, language));
  return [
    { label: say('eccentric'), cell: ({ durationsS }) => time(durationsS.eccentric) },
    { label: say('pauseStretched'), cell: ({ durationsS }) => time(durationsS.pauseStretched) },
    { label: say('concentric'), cell: ({ durationsS }) => time(durationsS.concentric) },
    { label: say('pauseShortened'), cell: ({ durationsS }) => time(durationsS.pauseShortened) },
  ];
}

function pathColumns(sheet: SheetLanguage, calibration: SetMeasurement['calibration']): Column[] {
  const { say, language } = sheet;
  const isAbout = calibration?.from === 'body';
  const written = (measured: Measured, exact: Print, rough: Print) =>
    isAbout ? say('about', { figure: figure(measured, rough, language) }) : figure(measured, exact, language);
  const length = (measured: Measured | null) => (measured === null ? null : figure(measured, centimetres, language));
  const speed = (measured: Measured | null) =>
    measured === null ? null : written(measured, metresPerSecond, { perUnit: 1, digits: 1 });
  const range = (measured: Measured | null) =>
    measured === null ? null : written(measured, centimetres, { perUnit: 100, digits: 0 });
  return [
    { label: say('rangeOfMotion'), cell: ({ romM }) => range(romM) },
    { label: say('driftForward'), cell: ({ driftForwardM }) => length(driftForwardM) },
    { label: say('driftBack'), cell: ({ driftBackM }) => length(driftBackM) },
    { label: say('meanSpeed'), cell: ({ meanConcentricMps }) => speed(meanConcentricMps) },
    { label: say('peakSpeed'), cell: ({ peakConcentricMps }) => speed(peakConcentricMps) },
    { label: say('depth'), cell: (rep) => depthWords(rep, sheet) },
  ];
}

/** A table with a row for each rep. Empty columns are left out, and so is a table without columns. */
function measureTable(
  reps: readonly RepMeasurement[],
  columns: readonly Column[],
  { id, caption, rep }: { readonly id: string; readonly caption: string; readonly rep: string },
): Block[] {
  const filled = columns.filter(({ cell }) => reps.some((each) => cell(each) !== null));
  if (filled.length === 0) return [];
  return [
    {
      kind: 'table',
      id,
      caption,
      columns: [{ label: rep, align: 'end' }, ...filled.map(({ label }) => ({ label, align: 'end' }) as const)],
      rows: reps.map((each): Inline[][] => [
        [text(String(each.index))],
        ...filled.map(({ cell }) => [text(cell(each) ?? none)]),
      ]),
    },
  ];
}

function clipBlocks(measured: SetMeasurement, clip: string, id: string, sheet: SheetLanguage): Block[] {
  const { say, language } = sheet;
  const { reps, offered, set, warnings } = measured;
  const table = (part: string, caption: string) => ({ id: `${id}-${part}`, caption, rep: say('rep') });
  const tables = [
    ...measureTable(reps, tempoColumns(sheet), table('tempo', say('tempoCaption', { clip }))),
    ...measureTable(reps, pathColumns(sheet, measured.calibration), table('way', say('pathCaption', { clip }))),
  ];
  if (tables.length === 0) return [];
  const lines = [
    ...(set.speedLossPct === null ? [] : [say('speedLoss', { loss: figure(set.speedLossPct, percent, language) })]),
    ...(isOfBody(measured.follows) ? [sayFollowed(measured, language)] : []),
    ...(offered.length === 0 ? [] : [sentence(sayNotCounted(offered.length, language))]),
    ...warnings.map((warning) => sentence(sayMeasuring(warning, language))),
  ];
  return [
    ...tables,
    ...lines.map((line, at): Block => ({ kind: 'paragraph', id: `${id}-note-${at + 1}`, inlines: [text(line)] })),
  ];
}

/**
 * What was measured on the clips of an exercise, rep by rep, with ±: tempo; range, drift, speed and depth; what to know
 * before reading the numbers. Nothing where nothing was measured.
 */
export function writeMeasures(
  entry: Entry,
  { id, exercise, units }: { readonly id: string; readonly exercise: string; readonly units: LoadUnits },
  { measures }: SheetExtras,
  sheet: SheetLanguage,
): Block[] {
  const blocks = entry.clips.flatMap((clip, index) => {
    const measured = measures?.get(clip.id);
    if (measured === undefined) return [];
    const name = sheet.say('quoted', { words: tidy(clip.name) });
    const loadKg = clipLoadKg(entry, clip);
    const loaded = loadKg ? `${name} (${sheet.format.load(loadKg, units)})` : name;
    return clipBlocks(measured, loaded, `${id}-measures-${index + 1}`, sheet);
  });
  if (blocks.length === 0) return [];
  return [
    { kind: 'heading', level: 3, id: `${id}-measures`, text: sheet.say('measures', { exercise }) },
    ...blocks,
    { kind: 'paragraph', id: `${id}-measures-margin`, inlines: [text(sheet.say('margin'))] },
  ];
}

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
