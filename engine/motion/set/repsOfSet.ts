import { findReps } from '../reps/findReps.ts';
import { type EdgedRep, withManualEdges } from '../reps/manualEdges.ts';
import { rangeLimits } from '../reps/rangeLimits.ts';
import type { Tracked } from '../source/tracked.ts';
import type { Scale } from './calibrate.ts';
import type { SetToMeasure } from './setToMeasure.ts';
import type { Path } from './tracked.ts';

/** The reps that count, with the edges that a person set, and movements that may be reps. */
export type RepsOfSet = { readonly counted: readonly EdgedRep[]; readonly offered: readonly EdgedRep[] };

/** The reps of a set's path, and what is offered beside them. What a person set reps on is no longer offered. */
export function repsOf(
  path: Path,
  { exercise, edges, realTimeFactor }: SetToMeasure,
  {
    scale,
    bodyHeightPx,
    tracked,
  }: { readonly scale: Scale | null; readonly bodyHeightPx: number | null; readonly tracked: Tracked },
): RepsOfSet {
  const bodyHeight = scale && bodyHeightPx !== null ? bodyHeightPx * scale.metresPerPixelUp : bodyHeightPx;
  const values = path.up.values.filter((value) => value !== null);
  const limits = rangeLimits(exercise, {
    bodyHeight,
    inMetres: scale !== null,
    noise: path.noise,
    whole: Math.max(...values) - Math.min(...values),
  });
  const seenShare = (fromS: number, toS: number) => shareSeen(path.timesS, tracked.sightings, { fromS, toS });
  const isGesture = (fromS: number, toS: number) => {
    const frames = path.timesS.flatMap((timeS, frame) => (timeS >= fromS && timeS <= toS ? [frame] : []));
    const [first, last] = [frames[0], frames.at(-1)];
    return first !== undefined && last !== undefined && (tracked.isGesture?.(first, last) ?? false);
  };
  const found = findReps(path.up, { exercise, limits, seenShare, isGesture });
  const lifting = edges.map(({ startS, stretchedEndS, endS }) => ({
    ...(startS !== undefined && { startS: startS / realTimeFactor }),
    ...(stretchedEndS !== undefined && { stretchedEndS: stretchedEndS / realTimeFactor }),
    ...(endS !== undefined && { endS: endS / realTimeFactor }),
  }));
  const lift = { curve: path.up, exercise };
  const counted = withManualEdges(found.counted, lifting, lift);
  const offered = withManualEdges(found.offered, [], lift);
  return { counted, offered: offered.filter(({ span }) => !counted.some((rep) => overlap(rep.span, span))) };
}

const overlap = (one: EdgedRep['span'], other: EdgedRep['span']): boolean =>
  Math.min(one.endS, other.endS) > Math.max(one.startS, other.startS);

function shareSeen(
  timesS: readonly number[],
  sightings: Tracked['sightings'],
  { fromS, toS }: { readonly fromS: number; readonly toS: number },
): number {
  const within = timesS.flatMap((timeS, frame) => (timeS >= fromS && timeS <= toS ? [sightings[frame] ?? null] : []));
  return within.length === 0 ? 1 : within.filter((sighting) => sighting !== null).length / within.length;
}
