import { scaleLinear } from 'd3-scale';
import type { HistoryPoint } from '../../electron/contract/comparing.ts';
import type { Criterion } from '../../engine/rubric/rubric.ts';

type TrendPoint = { readonly sessionId: string; readonly date: string; readonly score: number };

/** One score over a trainee's sessions; sessions without it are left out. */
export type TrendLine = { readonly name: string; readonly points: readonly TrendPoint[] };

/** The first and the last day that a chart shows, as ISO dates. */
export type TrendSpan = { readonly from: string; readonly to: string };

/** The session's score and each criterion's, as lines over time; a criterion never looked at has none. */
export function linesOf(points: readonly HistoryPoint[], criteria: readonly Criterion[]): readonly TrendLine[] {
  const lineOf = (name: string, scoreOf: (point: HistoryPoint) => number | undefined): TrendLine => ({
    name,
    points: points.flatMap((point) => {
      const score = scoreOf(point);
      return score === undefined ? [] : [{ sessionId: point.sessionId, date: point.date, score }];
    }),
  });
  const session = lineOf('Session', ({ grade }) => grade?.score);
  const each = criteria.map(({ id, name }) =>
    lineOf(name, ({ criteria: scores }) => scores.find(({ criterion }) => criterion === id)?.score),
  );
  return [session, ...each].filter((line) => line.points.length > 0);
}

/** The days from the first session to the last, the same for every chart of a trainee; null without sessions. */
export function spanOf(points: readonly HistoryPoint[]): TrendSpan | null {
  const [first, last] = [points[0], points.at(-1)];
  return first === undefined || last === undefined ? null : { from: first.date, to: last.date };
}

/** Where a day and a score lie in a chart of a width and a height: days across, 100 points at the top. */
export function trendScales(
  { from, to }: TrendSpan,
  { width, height }: { readonly width: number; readonly height: number },
) {
  return {
    x: scaleLinear([Date.parse(from), Date.parse(to)], [0, width]),
    y: scaleLinear([0, 100], [height, 0]),
  };
}
