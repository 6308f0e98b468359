import type { CameraPath, PointPx, Sighting } from '../../recording/recording.ts';
import { unsteadied } from '../camera/cameraPath.ts';
import { bodyHeightPx } from '../joints/lifter.ts';
import type { Bodies, Part } from '../joints/points.ts';
import type { FollowedPart } from '../measurement.ts';
import { splineThrough } from '../signal/evenGrid.ts';
import { median, quantile } from '../signal/quantile.ts';
import { commonMovement, type Member } from './commonMovement.ts';
import { type JointSeries, jointSeriesOf } from './jointSeries.ts';
import { jointsOfPart } from './parts.ts';

/** A part of the body as if it were the load, with how well it is seen. */
export type BodyCandidate = {
  readonly part: FollowedPart;
  readonly sightings: readonly (Sighting | null)[];
  /** Height in the first frame's pixels, + = up, frame by frame. */
  readonly heightsPx: readonly (number | null)[];
  /** Its own joint is seen, and not only what moves with it. */
  readonly givesRange: boolean;
  /** Share of the frames looked at that show it. */
  readonly coverage: number;
  /** From its low end to its high end, without the outermost twentieths, in pixels. */
  readonly rangePx: number;
  /** One standard deviation that three in four of its places keep within, in pixels. */
  readonly doubtPx: number;
};

/** One standard deviation as a share of the range. */
export const doubtShareOf = ({ doubtPx, rangePx }: BodyCandidate): number => doubtPx / Math.max(rangePx, 1e-6);

export type BodyToFollow = {
  readonly bodies: Bodies;
  readonly timesS: readonly number[];
  readonly camera: CameraPath | null;
  readonly pictureHeightPx: number;
};

/** Frames that were not looked at are filled in between looks no further apart than this. */
const longestBetweenLooksS = 0.45;
/** A lead is seen in at least so many of the frames that were looked at. */
const leastLeadShare = 0.15;
/** A doubt of this share of the lifter's height halves the confidence. */
const halfSureDoubt = 0.03;

/** Makes candidates of the body's parts; each is made once. */
export function bodyCandidates({ bodies, timesS, camera, pictureHeightPx }: BodyToFollow) {
  const looked = bodies.frames.flatMap((body, frame) => (body === null ? [] : [frame]));
  const all = jointSeriesOf(bodies, { timesS, camera, pictureHeightPx });
  const heightPx = bodyHeightPx(bodies) ?? pictureHeightPx / 2;
  const lookedTimesS = looked.map((frame) => timesS[frame] ?? 0);
  const seriesOf = (wanted: readonly Part[]) => all.filter(({ part }) => wanted.includes(part));
  const shown = ({ points }: JointSeries) => points.filter((point) => point !== null).length;

  return (part: FollowedPart): BodyCandidate | null => {
    const { leads, helpers } = jointsOfPart[part];
    const leading = leads
      .map(seriesOf)
      .find((series) => series.some((one) => shown(one) >= leastLeadShare * looked.length));
    if (!leading) return null;
    const helping = seriesOf(helpers).filter((series) => !leading.includes(series));
    const memberOf = ({ points, unsurePx }: JointSeries, isLead: boolean): Member => ({
      leads: isLead,
      unsure: looked.map((frame) => unsurePx[frame] ?? 0),
      values: looked.map((frame) => {
        const point = points[frame] ?? null;
        return point && -point.yPx;
      }),
    });
    const common = commonMovement(
      [...leading.map((series) => memberOf(series, true)), ...helping.map((series) => memberOf(series, false))],
      lookedTimesS,
    );
    if (!common) return null;
    const heightsPx = betweenLooks(common.values, { looked, timesS });
    const xs = betweenLooks(
      looked.map((frame) => meanX(leading, frame)),
      { looked, timesS },
    );
    const usualX = median(xs.filter((x) => x !== null));
    const doubts = betweenLooks(common.doubts, { looked, timesS });
    const known = heightsPx.filter((height) => height !== null);
    return {
      part,
      heightsPx,
      givesRange: leads[0]?.some((part) => leading[0]?.part === part) ?? false,
      coverage: common.values.filter((value) => value !== null).length / Math.max(1, looked.length),
      rangePx: quantile(known, 0.95) - quantile(known, 0.05),
      doubtPx: quantile(
        common.doubts.filter((doubt) => doubt !== null),
        0.75,
      ),
      sightings: heightsPx.map((height, frame) => {
        if (height === null) return null;
        const at = unsteadied(camera, frame, { xPx: xs[frame] ?? usualX, yPx: -height });
        const doubt = (doubts[frame] ?? 0) / (halfSureDoubt * heightPx);
        return { ...at, confidence: 1 / (1 + doubt ** 2) };
      }),
    };
  };
}

function meanX(series: readonly JointSeries[], frame: number): number | null {
  const seen = series.flatMap(({ points }): readonly PointPx[] => {
    const point = points[frame] ?? null;
    return point === null ? [] : [point];
  });
  return seen.length === 0 ? null : seen.reduce((sum, { xPx }) => sum + xPx, 0) / seen.length;
}

/** Values at looks spread over all frames, by a curve through those that lie close in time; null elsewhere. */
function betweenLooks(
  values: readonly (number | null)[],
  { looked, timesS }: { readonly looked: readonly number[]; readonly timesS: readonly number[] },
): (number | null)[] {
  const all: (number | null)[] = timesS.map(() => null);
  let from = 0;
  for (let index = 1; index <= looked.length; index += 1) {
    const goesOn =
      index < looked.length &&
      values[index] !== null &&
      values[index - 1] !== null &&
      (timesS[looked[index] ?? 0] ?? 0) - (timesS[looked[index - 1] ?? 0] ?? 0) <= longestBetweenLooksS;
    if (goesOn) continue;
    const run = looked.slice(from, index).flatMap((frame, place) => {
      const value = values[from + place] ?? null;
      return value === null ? [] : [{ frame, value }];
    });
    from = index;
    const [first, last] = [run[0], run.at(-1)];
    if (first === undefined || last === undefined) continue;
    const at = splineThrough(
      run.map(({ frame }) => timesS[frame] ?? 0),
      run.map(({ value }) => value),
    );
    for (let frame = first.frame; frame <= last.frame; frame += 1) all[frame] = at(timesS[frame] ?? 0);
  }
  return all;
}
