import type { HistoryPoint } from '../../electron/contract/comparing.ts';
import type { Criterion } from '../../engine/rubric/rubric.ts';

/** One score over a trainee's sessions; sessions without it are left out. */
export type TrendLine = {
  readonly name: string;
  readonly points: readonly { readonly date: string; readonly score: number }[];
};

/** The session's score and each criterion's, as lines over time; a criterion never looked at has none. */
export function linesOf(points: readonly HistoryPoint[], criteria: readonly Criterion[]): readonly TrendLine[] {
  const session: TrendLine = {
    name: 'Session',
    points: points.flatMap(({ date, mark }) => (mark === null ? [] : [{ date, score: mark.score }])),
  };
  const each = criteria.map(
    ({ id, name }): TrendLine => ({
      name,
      points: points.flatMap(({ date, criteria: scores }) => {
        const found = scores.find(({ criterion }) => criterion === id);
        return found === undefined ? [] : [{ date, score: found.score }];
      }),
    }),
  );
  return [session, ...each].filter((line) => line.points.length > 0);
}

/** Where a point lies in a chart of a width and a height: sessions evenly apart, 100 points at the top. */
export function placed(
  points: TrendLine['points'],
  { width, height }: { readonly width: number; readonly height: number },
): readonly { readonly x: number; readonly y: number }[] {
  const gap = points.length > 1 ? width / (points.length - 1) : 0;
  return points.map(({ score }, place) => ({
    x: points.length > 1 ? place * gap : width / 2,
    y: height - (score / 100) * height,
  }));
}
