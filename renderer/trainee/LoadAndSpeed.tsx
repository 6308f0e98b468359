import { useEffect, useId, useState } from 'react';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import { loadIn } from '../../engine/review/load.ts';
import { day, estimatedLoadWords, loadWords, plain } from '../base/figures.ts';
import { read } from '../bridge/read.ts';
import { sayTrainee } from '../words/sayTrainee.ts';
import {
  type ExerciseSpeeds,
  progressAtSpeed,
  type SessionSpeeds,
  type SetSpeed,
  speedScales,
  speedsByExercise,
} from './speedLines.ts';

type LoadAndSpeedProps = {
  readonly traineeId: string;
  readonly units: 'kg' | 'lb';
  readonly catalogue: Catalogue;
};

/** How fast each load went up over the weeks; nothing while no exercise was measured with two loads. */
export function LoadAndSpeed({ traineeId, units, catalogue }: LoadAndSpeedProps) {
  const [sets, setSets] = useState<readonly SetSpeed[]>([]);
  useEffect(() => {
    let stale = false;
    setSets([]);
    void read('trainees.speeds', { traineeId }).then((answer) => {
      if (answer !== null && !stale) setSets(answer);
    });
    return () => {
      stale = true;
    };
  }, [traineeId]);
  if (sets.length === 0) return null;
  return (
    <section aria-label={sayTrainee('loadAndSpeed')}>
      <h2>{sayTrainee('loadAndSpeed')}</h2>
      <p className="soft">{sayTrainee('loadAndSpeedWords')}</p>
      <div className="trend-charts">
        {speedsByExercise(sets).map((speeds) => (
          <SpeedChart
            key={speeds.exercise}
            name={catalogue.exercises.find(({ id }) => id === speeds.exercise)?.name ?? speeds.exercise}
            speeds={speeds}
            units={units}
          />
        ))}
      </div>
    </section>
  );
}

const size = { width: 220, height: 120 };
const edge = { left: 30, right: 10, top: 8, bottom: 18 };

type SpeedChartProps = { readonly name: string; readonly speeds: ExerciseSpeeds; readonly units: 'kg' | 'lb' };

/** The speed of each set by its load, with a line for each session: to look at, and as a table for those who read. */
function SpeedChart({ name, speeds, units }: SpeedChartProps) {
  const titleId = useId();
  const descId = useId();
  const scales = speedScales(speeds, { ...size, units });
  const progress = progressAtSpeed(speeds);
  const sets = speeds.sessions.flatMap((session) => session.sets);
  const loadOnDay = ({ date, loadKg }: { readonly date: string; readonly loadKg: number }): string =>
    sayTrainee('loadOnDay', { load: estimatedLoadWords(loadKg, units), date: day(date) });
  const newest = speeds.sessions.at(-1);
  return (
    <figure className="trend-chart">
      <figcaption>
        <strong>{name}</strong> <span className="soft">{sayTrainee('speedByUnits', { units })}</span>
      </figcaption>
      <svg
        viewBox={`${-edge.left} ${-edge.top} ${size.width + edge.left + edge.right} ${size.height + edge.top + edge.bottom}`}
        role="img"
        aria-labelledby={titleId}
        aria-describedby={descId}
      >
        <title id={titleId}>{sayTrainee('speedByLoad', { name })}</title>
        <desc id={descId}>
          {sets
            .map((set) =>
              sayTrainee('loadAndItsSpeed', {
                date: day(set.date),
                load: loadWords(set.loadKg, units),
                speed: speedWords(set.fastestMps),
              }),
            )
            .join('; ')}
        </desc>
        {scales.speed.ticks(4).map((speed) => (
          <g key={speed}>
            <line className="trend-grid" x1={0} x2={size.width} y1={scales.speed(speed)} y2={scales.speed(speed)} />
            <text className="trend-tick" x={-4} y={scales.speed(speed)} textAnchor="end" dominantBaseline="middle">
              {plain(speed)}
            </text>
          </g>
        ))}
        {scales.load.ticks(4).map((load) => (
          <text key={load} className="trend-tick" x={scales.load(load)} y={size.height + 14} textAnchor="middle">
            {plain(load)}
          </text>
        ))}
        {speeds.sessions.map((session) => (
          <SessionMarks
            key={session.sessionId}
            session={session}
            age={session === newest ? 'newest' : 'older'}
            x={(loadKg) => scales.load(loadIn(units, loadKg))}
            y={scales.speed}
          />
        ))}
      </svg>
      {progress !== null && (
        <p>
          {sayTrainee('progress', {
            speed: speedWords(progress.speedMps),
            first: loadOnDay(progress.first),
            last: loadOnDay(progress.last),
          })}
        </p>
      )}
      <details>
        <summary aria-label={sayTrainee('tableOf', { name })}>{sayTrainee('table')}</summary>
        <table aria-label={name}>
          <thead>
            <tr>
              <th scope="col">{sayTrainee('session')}</th>
              <th scope="col" className="end">
                {sayTrainee('load')}
              </th>
              <th scope="col" className="end">
                {sayTrainee('speed')}
              </th>
            </tr>
          </thead>
          <tbody>
            {speeds.sessions.flatMap(({ date, sets }) =>
              sets.map(({ clipId, loadKg, fastestMps }) => (
                <tr key={clipId}>
                  <th scope="row">{day(date)}</th>
                  <td className="figure end">{loadWords(loadKg, units)}</td>
                  <td className="figure end">{speedWords(fastestMps)}</td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      </details>
    </figure>
  );
}

const speedWords = (speedMps: number): string => sayTrainee('metresPerSecond', { speed: plain(speedMps) });

type Scale = (value: number) => number;
type SessionMarksProps = {
  readonly session: SessionSpeeds;
  readonly age: 'newest' | 'older';
  readonly x: Scale;
  readonly y: Scale;
};

function SessionMarks({ session: { sets, line }, age, x, y }: SessionMarksProps) {
  const loads = sets.map(({ loadKg }) => loadKg);
  const ends = [Math.min(...loads), Math.max(...loads)] as const;
  const speedAt = (loadKg: number): number => (line === null ? 0 : line.interceptMps + line.slopeMpsPerKg * loadKg);
  return (
    <g className="speed-session" data-age={age}>
      {line !== null && (
        <line
          className="trend-line"
          x1={x(ends[0])}
          x2={x(ends[1])}
          y1={y(speedAt(ends[0]))}
          y2={y(speedAt(ends[1]))}
        />
      )}
      {sets.map(({ clipId, loadKg, fastestMps }) => (
        <circle key={clipId} className="trend-dot" cx={x(loadKg)} cy={y(fastestMps)} r={3.5} />
      ))}
    </g>
  );
}
