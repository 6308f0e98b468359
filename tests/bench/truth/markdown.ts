import type { MeasuredTrueClip } from './measureTrueClip.ts';
import { type Spread, totalsOf } from './totals.ts';

type Group = { readonly name: string; readonly has: (measured: MeasuredTrueClip) => boolean };

const isRendered = ({ clip }: MeasuredTrueClip) => clip.kind === 'rendered';
const isHandHeld = ({ clip }: MeasuredTrueClip) => clip.view.includes('hand-held');
const isOblique = ({ clip }: MeasuredTrueClip) => Math.abs(Number.parseInt(clip.view, 10) - 90) > 20;
const hasBar = ({ clip }: MeasuredTrueClip) => clip.exercise !== 'bodyweight-squat';

/** Each clip belongs to the first group that has it. */
const groups: readonly Group[] = [
  { name: 'films of people: bar and body weight, three-quarter', has: (one) => !isRendered(one) },
  { name: 'rendered: body weight', has: (one) => !hasBar(one) },
  { name: 'rendered: bar, hand-held, side', has: isHandHeld },
  { name: 'rendered: bar, tripod, three-quarter', has: isOblique },
  { name: 'rendered: bar, tripod, side', has: () => true },
];

/** The README's table: a row for each kind of clip. Errors are median / nine of ten within. */
export function markdownTable(measured: readonly MeasuredTrueClip[]): string[] {
  const rows = groups.map(({ name }) => {
    const mine = measured.filter((one) => groups.find(({ has }) => has(one))?.name === name);
    const { expected, right, invented, edges, range, peakSpeed, cover } = totalsOf(mine.map((one) => one.compared));
    const cells = [
      ...[name, String(mine.length), `${right} of ${expected}`, String(invented)],
      ...[spreadText(edges.all, 2, 's'), spreadText(range, 1, '%'), spreadText(peakSpeed, 1, '%')],
      cover === null ? 'not known' : `${Math.round(100 * cover)} %`,
    ];
    return `| ${cells.join(' | ')} |`;
  });
  return [
    '| clips | number | reps found | invented | start, turn, end | range | peak speed | truth within ± |',
    '|---|---|---|---|---|---|---|---|',
    ...rows,
  ];
}

function spreadText({ count, median, p90 }: Spread, digits: number, unit: string): string {
  return count === 0 ? 'not known' : `${median.toFixed(digits)} / ${p90.toFixed(digits)} ${unit}`;
}
