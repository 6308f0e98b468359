import { useId } from 'react';
import { day, points as inPoints } from '../parts/figures.ts';
import { placed, type TrendLine } from './trendLines.ts';

const size = { width: 220, height: 70 };
const edge = 8;

/** One score over the sessions: a line to look at, and the same as a table for those who read. */
export function TrendChart({ line }: { readonly line: TrendLine }) {
  const titleId = useId();
  const spots = placed(line.points, size);
  const [first, last] = [line.points[0], line.points.at(-1)];
  const way =
    first === undefined || last === undefined || line.points.length < 2
      ? 'one session so far'
      : `from ${inPoints(first.score)} to ${inPoints(last.score)}`;
  return (
    <figure className="trend-chart">
      <figcaption>
        <strong>{line.name}</strong> <span className="figure">{last === undefined ? '–' : inPoints(last.score)}</span>
      </figcaption>
      <svg
        viewBox={`${-edge} ${-edge} ${size.width + 2 * edge} ${size.height + 2 * edge}`}
        role="img"
        aria-labelledby={titleId}
      >
        <title id={titleId}>{`${line.name}: ${way}`}</title>
        {[0, 50, 100].map((score) => (
          <line
            key={score}
            className="trend-grid"
            x1={0}
            x2={size.width}
            y1={size.height * (1 - score / 100)}
            y2={size.height * (1 - score / 100)}
          />
        ))}
        <polyline className="trend-line" points={spots.map(({ x, y }) => `${x},${y}`).join(' ')} />
        {spots.map(({ x, y }, place) => (
          <circle key={line.points[place]?.date ?? place} className="trend-dot" cx={x} cy={y} r={3.5} />
        ))}
      </svg>
      <details>
        <summary>As a table</summary>
        <table>
          <tbody>
            {line.points.map(({ date, score }) => (
              <tr key={date}>
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
