import type { Fault } from '../../engine/exercises/exercise.ts';
import type { Measured } from '../../engine/motion/measurement.ts';
import type { Flag } from '../../engine/review/review.ts';
import { frameOfMoment } from '../../engine/time/frames.ts';
import { day, loadWords } from '../base/figures.ts';
import {
  aboutCentimetres,
  aboutMetresPerSecond,
  type Figure,
  figureWords,
  inCentimetres,
  inMetresPerSecond,
  inSeconds,
  inTens,
} from '../base/measureWords.ts';
import { Strokes } from '../base/Strokes.tsx';
import { clipClock } from '../player/clipClock.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { sayCompare } from '../words/sayCompare.ts';
import { flagsOfRep, type Side } from './side.ts';

type Write = (measured: Measured) => Figure;

/** When it was, what was lifted, and which rep is shown. */
export function Caption({ side }: { readonly side: Side }) {
  const { date, exercise, clip, rep, units } = side;
  const name = catalogueState(({ catalogue }) => catalogue?.exercises.find(({ id }) => id === exercise)?.name);
  const { loadKg } = clip;
  const parts = [
    day(date),
    name ?? exercise,
    ...(typeof loadKg === 'number' ? [loadWords(loadKg, units)] : []),
    sayCompare('rep', { rep }),
  ];
  return <p className="compare-caption">{parts.join(' · ')}</p>;
}

/** What was measured of the rep, each with its ±, as the table of measures writes it. */
export function RepMeasures({ side: { measurement, rep } }: { readonly side: Side }) {
  const measured = measurement?.reps.find(({ index }) => index === rep);
  if (measured === undefined) return <p className="soft">{sayCompare('notMeasured')}</p>;
  const isAbout = measurement?.calibration?.from === 'body';
  const fact = (
    name: 'range' | 'meanSpeed' | 'eccentric' | 'knee',
    value: Measured | null,
    write: Write,
    unit: string,
  ) => (value === null ? [] : [[sayCompare(name), `${figureWords(write(value))}${unit}`] as const]);
  const facts = [
    ...fact('range', measured.romM, isAbout ? aboutCentimetres : inCentimetres, ' cm'),
    ...fact('meanSpeed', measured.meanConcentricMps, isAbout ? aboutMetresPerSecond : inMetresPerSecond, ' m/s'),
    ...fact('eccentric', measured.durationsS.eccentric, inSeconds, ' s'),
    ...fact('knee', measured.joints?.kneeDeg ?? null, inTens, '°'),
  ];
  if (facts.length === 0) return <p className="soft">{sayCompare('notMeasured')}</p>;
  return (
    <dl className="compare-measures">
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd className="figure">{value}</dd>
        </div>
      ))}
    </dl>
  );
}

type RepFlagsProps = { readonly side: Side; readonly onGo: (frame: number) => void };

/** What was remarked on the rep; each leads to its moment. */
export function RepFlags({ side, onGo }: RepFlagsProps) {
  const catalogue = catalogueState((state) => state.catalogue);
  const exercise = catalogue?.exercises.find(({ id }) => id === side.exercise);
  const faults: readonly Fault[] = exercise?.faults ?? [];
  const flags = flagsOfRep(side);
  const { table } = side.tables;
  const named = ({ criterion, fault }: Flag): string =>
    faults.find(({ id }) => id === fault)?.name ??
    catalogue?.rubric.criteria.find(({ id }) => id === criterion)?.name ??
    criterion;
  if (flags.length === 0) return <p className="soft">{sayCompare('noFlags')}</p>;
  return (
    <ul className="compare-flags">
      {flags.map((flag) => {
        const frame = frameOfMoment(flag.at, table);
        return (
          <li key={flag.id}>
            <button type="button" className="quiet-button" onClick={() => onGo(frame)}>
              <Strokes severity={flag.severity} /> {named(flag)}{' '}
              <span className="figure soft">{clipClock(side.clip, table, frame)}</span>
            </button>
            {flag.note !== '' && <span className="soft"> {flag.note}</span>}
          </li>
        );
      })}
    </ul>
  );
}
