import { scaleLinear } from 'd3-scale';
import { line as pathThrough } from 'd3-shape';
import { useId } from 'react';
import type { HistoryPoint } from '../../electron/contract/comparing.ts';
import type { Criterion } from '../../engine/rubric/rubric.ts';
import { day, points as inPoints } from '../base/figures.ts';
import { sayTrainee } from '../words/sayTrainee.ts';

type TrendPoint = { readonly sessionId: string; readonly date: string; readonly score: number };

/** One score over a trainee's sessions; sessions without it are left out. */
type TrendLine = { readonly name: string; readonly points: readonly TrendPoint[] };

/** The first and the last day that a chart shows, as ISO dates. */
type TrendSpan = { readonly from: string; readonly to: string };

/** The session's score and each criterion's, as lines over time; a criterion never looked at has none. */
export function linesOf(points: readonly HistoryPoint[], criteria: readonly Criterion[]): readonly TrendLine[] {
  const lineOf = (name: string, scoreOf: (point: HistoryPoint) => number | undefined): TrendLine => ({
    name,
    points: points.flatMap((point) => {
      const score = scoreOf(point);
      return score === undefined ? [] : [{ sessionId: point.sessionId, date: point.date, score }];
    }),
  });
  const session = lineOf(sayTrainee('session'), ({ grade }) => grade?.score);
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

const size = { width: 220, height: 70 };
const edge = 8;

/** One score over the sessions: a line to look at, and the same as a table for those who read. */
export function TrendChart({ line, span }: { readonly line: TrendLine; readonly span: TrendSpan }) {
  const titleId = useId();
  const descId = useId();
  const { x, y } = trendScales(span, size);
  const path = pathThrough<TrendLine['points'][number]>()
    .x(({ date }) => x(Date.parse(date)))
    .y(({ score }) => y(score));
  const [first, last] = [line.points[0], line.points.at(-1)];
  const change =
    first === undefined || last === undefined || line.points.length < 2
      ? sayTrainee('oneSession')
      : sayTrainee('change', { first: inPoints(first.score), last: inPoints(last.score) });
  return (
    <figure className="trend-chart">
      <figcaption>
        <strong>{line.name}</strong> <span className="figure">{last === undefined ? '–' : inPoints(last.score)}</span>
      </figcaption>
      <svg
        viewBox={`${-edge} ${-edge} ${size.width + 2 * edge} ${size.height + 2 * edge}`}
        role="img"
        aria-labelledby={titleId}
        aria-describedby={descId}
      >
        <title id={titleId}>{sayTrainee('lineTitle', { name: line.name, change })}</title>
        <desc id={descId}>
          {line.points
            .map(({ date, score }) => sayTrainee('dated', { date: day(date), value: inPoints(score) }))
            .join('; ')}
        </desc>
        {[0, 50, 100].map((score) => (
          <line key={score} className="trend-grid" x1={0} x2={size.width} y1={y(score)} y2={y(score)} />
        ))}
        <path className="trend-line" d={path(line.points) ?? ''} />
        {line.points.map(({ sessionId, date, score }) => (
          <circle key={sessionId} className="trend-dot" cx={x(Date.parse(date))} cy={y(score)} r={3.5} />
        ))}
      </svg>
      <p className="trend-days soft" aria-hidden="true">
        <span>{day(span.from)}</span>
        {span.to !== span.from && <span>{day(span.to)}</span>}
      </p>
      <details>
        <summary aria-label={sayTrainee('tableOf', { name: line.name })}>{sayTrainee('table')}</summary>
        <table aria-label={line.name}>
          <thead>
            <tr>
              <th scope="col">{sayTrainee('session')}</th>
              <th scope="col" className="end">
                {sayTrainee('points')}
              </th>
            </tr>
          </thead>
          <tbody>
            {line.points.map(({ sessionId, date, score }) => (
              <tr key={sessionId}>
                <th scope="row">{day(date)}</th>
                <td className="figure end">{inPoints(score)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
  );
}
