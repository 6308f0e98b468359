import type { RepMeasurement } from '../../../engine/motion/measurement.ts';
import { edgesOf } from './compare.ts';
import type { MeasuredTrueClip } from './measureTrueClip.ts';
import { isCovered, type Spread, type Totals, totalsOf } from './totals.ts';

const widths = [28, 5, 5, 6, 8, 18, 18, 18, 18, 13, 13, 5, 9] as const;
const columns = (cells: readonly string[]) => cells.map((cell, index) => cell.padEnd(widths[index] ?? 0)).join(' ');

/** Heading of the table of clips. */
export const heading = columns([
  ...['', 'reps', 'right', 'missed', 'invented', 'start s', 'turn s', 'end s', 'phases s'],
  ...['range %', 'peak speed %', 'cover', 'follows', 'view told; known'],
]);

/** One clip as a line of the table; a star: by a recording of older code. */
export function lineOf({ clip, measurement, compared, isOlder }: MeasuredTrueClip): string {
  return `${totalsLine(isOlder ? `${clip.name} *` : clip.name, totalsOf([compared]), measurement.follows)} ${measurement.view?.view ?? 'unknown'}; ${clip.view}`;
}

/** Several clips as a line of the table. Spreads are median / nine of ten / most. */
export function totalsLine(name: string, totals: Totals, follows = ''): string {
  const { expected, right, missed, invented, edges, phases, range, peakSpeed, cover } = totals;
  return columns([
    ...[name, ...[expected, right, missed, invented].map(String)],
    ...[edges.start, edges.turn, edges.end, phases].map((spread) => spreadText(spread, 2)),
    ...[spreadText(range, 1), spreadText(peakSpeed, 1)],
    ...[cover === null ? '-' : cover.toFixed(2), follows],
  ]);
}

function spreadText({ count, median, p90, max }: Spread, digits: number): string {
  return count === 0 ? '-' : [median, p90, max].map((size) => size.toFixed(digits)).join('/');
}

/** A clip's reps, each beside its truth. */
export function repLines({ clip, first, measurement, compared }: MeasuredTrueClip): string[] {
  const known = clip.reps.map(({ startS, turnS, endS }) => `  true     ${edgesText([startS, turnS, endS])}`);
  const told = measurement.reps.map(
    (rep) => `  ${isInvented(compared, rep) ? 'INVENTED' : 'counted '} ${repText(rep)}`,
  );
  const offered = measurement.offered.map((rep) => `  offered  ${repText(rep)}`);
  const numbers = compared.told.map((one) => {
    const { value, plusMinus } = one.told;
    const outside = isCovered(one) ? '' : '   OUTSIDE';
    return `  ${one.what.padEnd(16)} ${value.toFixed(3)} ± ${plusMinus.toFixed(3)}, truth ${one.truth.toFixed(3)}${outside}`;
  });
  const warnings = measurement.warnings.map((warning) => `  warning  ${JSON.stringify(warning)}`);
  return [...known, ...told, ...offered, ...numbers, ...warnings];

  function repText(rep: RepMeasurement): string {
    const { start, turn, end } = edgesOf(rep, first);
    return `${edgesText([start, turn, end])}  range ${rep.romM?.value.toFixed(3) ?? '-'} m  sure ${rep.sureness.toFixed(2)} ${rep.doubts.join(' ')}`;
  }
}

const isInvented = ({ invented }: MeasuredTrueClip['compared'], rep: RepMeasurement) => invented.includes(rep);

const edgesText = (seconds: readonly (number | null)[]) =>
  seconds.map((one) => (one === null ? '   -' : one.toFixed(2))).join('  ');
