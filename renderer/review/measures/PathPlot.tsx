import { ticks } from 'd3-array';
import { Fragment, useId, useMemo } from 'react';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import { decimal, figureWords, inCentimetres } from '../../base/measureWords.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import { gappedPath } from '../model/pictureGeometry.ts';
import {
  expectedLines,
  type PlotPoint,
  type PlotReach,
  type PlottedRep,
  plottedReps,
  pointInPlot,
  reachOf,
} from './pathPlot.ts';

type PathPlotProps = {
  readonly measurement: SetMeasurement;
  readonly exercise: Exercise | null;
  readonly current: number | null;
};

const size = { width: 260, height: 240 };
const labelPx = 56;
const centimetre = 'cm';

function heightOf(heightShare: number): 'lowest' | 'highest' | 'between' {
  if (heightShare < 0.05) return 'lowest';
  return heightShare > 0.95 ? 'highest' : 'between';
}

/** The furthest drift of the load in a rep: "3.1 ± 0.4 cm forward, 40 % of the way up". */
function deviationWords({ rep }: PlottedRep): string {
  const { largestDeviation } = rep;
  if (largestDeviation === null) return sayMeasures('noDeviation');
  const { m, heightShare } = largestDeviation;
  return sayMeasures('deviation', {
    centimetres: figureWords(inCentimetres({ ...m, value: Math.abs(m.value) })),
    side: m.value < 0 ? 'back' : 'forward',
    height: heightOf(heightShare),
    percent: decimal(heightShare * 100, 0),
  });
}

/** The load path seen from the side: forward to the right, the current rep strong, the expected line behind it. */
export function PathPlot({ measurement, exercise, current }: PathPlotProps) {
  const titleId = useId();
  const descId = useId();
  const reps = useMemo(() => plottedReps(measurement), [measurement]);
  if (reps.length === 0 || measurement.facing === null) {
    return (
      <figure className="plot">
        <figcaption>
          <strong>{sayMeasures('path')}</strong>
        </figcaption>
        <p className="soft">{sayMeasures('noPath')}</p>
      </figure>
    );
  }
  const toleranceM = exercise?.targets.path.toleranceM ?? 0;
  const reach = reachOf(reps, toleranceM);
  const shown = reps.find(({ rep }) => rep.index === current) ?? reps[0];
  const lines = exercise === null || shown === undefined ? [] : expectedLines(exercise, shown, reps, reach.upM);
  const draw = ({ points }: PlottedRep): string =>
    gappedPath(
      points.map((point) => (point === null ? null : pointInPlot(point, reach, size))),
      0,
      points.length - 1,
    );
  return (
    <figure className="plot">
      <figcaption>
        <strong>{sayMeasures('pathOfRep', { rep: shown?.rep.index ?? '' })}</strong>{' '}
        <span className="soft">{sayMeasures('othersFaint')}</span>
      </figcaption>
      <svg
        viewBox={`-34 -8 ${size.width + 44} ${size.height + 40}`}
        role="img"
        aria-labelledby={titleId}
        aria-describedby={descId}
      >
        <title id={titleId}>{sayMeasures('pathTitle')}</title>
        <desc id={descId}>
          {reps.map((one) => sayMeasures('ofRep', { rep: one.rep.index, what: deviationWords(one) })).join('. ')}
        </desc>
        <Expected lines={lines} toleranceM={toleranceM} reach={reach} />
        <Axes reach={reach} />
        {reps.map((one) => (
          <path key={one.rep.index} className="plot-faint" d={one === shown ? '' : draw(one)} />
        ))}
        {shown !== undefined && <path className="plot-strong" d={draw(shown)} />}
        {shown?.deviation != null && <Deviation at={shown.deviation} shown={shown} reach={reach} />}
      </svg>
      {shown !== undefined && <p>{sayMeasures('furthestOff', { deviation: deviationWords(shown) })}</p>}
      <p className="soft">
        {lines.length > 0
          ? sayMeasures('expected', { centimetres: decimal(toleranceM * 100, 0) })
          : sayMeasures('noExpected')}{' '}
        {sayMeasures('stretchedSideways')}
      </p>
    </figure>
  );
}

type ShownProps = { readonly shown: PlottedRep; readonly reach: PlotReach };

type ExpectedProps = {
  readonly lines: readonly (readonly PlotPoint[])[];
  readonly toleranceM: number;
  readonly reach: PlotReach;
};

/** The expected line with what the exercise tolerates on both sides. */
function Expected({ lines, toleranceM, reach }: ExpectedProps) {
  const draw = (points: readonly PlotPoint[], asideM: number): readonly string[] =>
    points.map(({ forwardM, heightM }) => {
      const { xPx, yPx } = pointInPlot({ forwardM: forwardM + asideM, heightM }, reach, size);
      return `${xPx},${yPx}`;
    });
  return (
    <g clipPath="url(#plot-frame)">
      <clipPath id="plot-frame">
        <rect width={size.width} height={size.height} />
      </clipPath>
      {lines.map((points) => {
        const around = [...draw(points, -toleranceM), ...[...draw(points, toleranceM)].reverse()];
        return (
          <Fragment key={around[0]}>
            <polygon className="plot-band" points={around.join(' ')} />
            <polyline className="plot-expected" points={draw(points, 0).join(' ')} />
          </Fragment>
        );
      })}
    </g>
  );
}

function Axes({ reach }: { readonly reach: PlotReach }) {
  const sideCm = reach.sideM * 100;
  return (
    <g className="plot-axes">
      <rect width={size.width} height={size.height} />
      {ticks(0, reach.upM * 100, 5).map((cm) => {
        const { yPx } = pointInPlot({ forwardM: 0, heightM: cm / 100 }, reach, size);
        return (
          <text key={cm} x={-5} y={yPx} textAnchor="end" dominantBaseline="central">
            {decimal(cm, 0)}
          </text>
        );
      })}
      {ticks(-sideCm, sideCm, 8).map((cm) => {
        const { xPx } = pointInPlot({ forwardM: cm / 100, heightM: 0 }, reach, size);
        return (
          <text key={cm} x={xPx} y={size.height + 12} textAnchor="middle">
            {decimal(Math.abs(cm), cm % 1 === 0 ? 0 : 1)}
          </text>
        );
      })}
      <text x={0} y={size.height + 27}>
        {sayMeasures('towardsBack')}
      </text>
      <text x={size.width / 2} y={size.height + 27} textAnchor="middle">
        {centimetre}
      </text>
      <text x={size.width} y={size.height + 27} textAnchor="end">
        {sayMeasures('towardsFront')}
      </text>
    </g>
  );
}

function Deviation({ at, shown, reach }: ShownProps & { readonly at: PlotPoint }) {
  const { xPx, yPx } = pointInPlot(at, reach, size);
  const { largestDeviation } = shown.rep;
  if (largestDeviation === null) return null;
  const onRight = xPx > size.width / 2;
  // Away from the middle, where the paths are, as long as it fits.
  const towardsRight = onRight ? xPx < size.width - labelPx : xPx < labelPx;
  const words = `${decimal(Math.abs(largestDeviation.m.value) * 100, 1)} ${centimetre}`;
  return (
    <g className="plot-deviation">
      <circle cx={xPx} cy={yPx} r={5} />
      <text
        x={xPx + (towardsRight ? 10 : -10)}
        y={Math.min(size.height - 10, Math.max(10, yPx))}
        textAnchor={towardsRight ? 'start' : 'end'}
        dominantBaseline="central"
      >
        {words}
      </text>
    </g>
  );
}
