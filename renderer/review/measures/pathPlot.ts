import type { Exercise } from '../../../engine/exercises/exercise.ts';
import {
  frameAtSeconds,
  type RepMeasurement,
  type SetMeasurement,
  type Span,
} from '../../../engine/motion/measurement.ts';
import { usualPosition } from '../../../engine/motion/set/expectedPath.ts';
import type { PointPx } from '../../../engine/recording/recording.ts';

/** A point of the load within its rep, in metres: forward of where the rep began, above its lowest point. */
export type PlotPoint = { readonly forwardM: number; readonly heightM: number };

export type PlottedRep = {
  readonly rep: RepMeasurement;
  readonly points: readonly (PlotPoint | null)[];
  /** Those of its two moving phases, without gaps. */
  readonly eccentric: readonly PlotPoint[];
  readonly concentric: readonly PlotPoint[];
  /** Where the largest deviation is. */
  readonly deviation: PlotPoint | null;
};

/** The bar paths, rep by rep; empty without a scale or a known facing. */
export function plottedReps({ reps, curves }: Pick<SetMeasurement, 'reps' | 'curves'>): readonly PlottedRep[] {
  return reps.flatMap((rep): PlottedRep[] => {
    const [first = 0, last = 0] = [rep.startS, rep.endS].map((seconds) => frameAtSeconds(curves.timesS, seconds));
    const seen: (PlotPoint | null)[] = [];
    for (let frame = first; frame <= last; frame += 1) {
      const [forwardM, heightM] = [curves.forwardM[frame], curves.heightM[frame]];
      seen.push(forwardM == null || heightM == null ? null : { forwardM, heightM });
    }
    const known = seen.filter((point) => point !== null);
    const [start] = known;
    if (start === undefined) return [];
    const lowestM = Math.min(...known.map(({ heightM }) => heightM));
    const laid = (point: PlotPoint | null): PlotPoint | null =>
      point === null ? null : { forwardM: point.forwardM - start.forwardM, heightM: point.heightM - lowestM };
    const points = seen.map(laid);
    const { largestDeviation } = rep;
    const at = largestDeviation === null ? -1 : frameAtSeconds(curves.timesS, largestDeviation.atS) - first;
    const within = (span: Span | null): readonly PlotPoint[] =>
      points.filter((point, index): point is PlotPoint => {
        const seconds = curves.timesS[first + index] ?? 0;
        return point !== null && span !== null && seconds >= span.startS && seconds <= span.endS;
      });
    const { eccentric, concentric } = rep.phases;
    return [
      {
        rep,
        points,
        eccentric: within(eccentric),
        concentric: within(concentric),
        deviation: points[at] ?? null,
      },
    ];
  });
}

/** At how many heights a set's usual curve is drawn. */
const levels = 24;

/** The usual forward position of the reps at rising heights, which drift is measured against. */
function usualCurve(phases: readonly (readonly PlotPoint[])[]): readonly PlotPoint[] {
  const mostM = Math.min(...phases.map((points) => Math.max(...points.map(({ heightM }) => heightM))));
  return Array.from({ length: levels + 1 }, (_, level): PlotPoint => {
    const heightM = (mostM * level) / levels;
    const places = phases.map(
      (points) =>
        points.reduce((near, point) =>
          Math.abs(point.heightM - heightM) < Math.abs(near.heightM - heightM) ? point : near,
        ).forwardM,
    );
    return { forwardM: usualPosition(places) ?? 0, heightM };
  });
}

/**
 * The lines that a rep's load is expected to follow, from the lowest point up: upright through where it began; along the
 * rail, which leans by its tilt (+ = towards the back as it lowers); where the path is a curve, the set's own usual one, down
 * and up. None for other shapes, and none for a single rep of a curve.
 */
export function expectedLines(
  { targets: { path } }: Pick<Exercise, 'targets'>,
  shown: PlottedRep,
  reps: readonly PlottedRep[],
  upM: number,
): readonly (readonly PlotPoint[])[] {
  if (path.shape === 'vertical' || path.shape === 'rail') {
    const startM = shown.points.find((point) => point !== null)?.heightM ?? 0;
    const forwardPerUp = path.shape === 'rail' ? Math.tan(((path.railTiltDeg ?? 0) * Math.PI) / 180) : 0;
    return [[0, upM].map((heightM) => ({ forwardM: (heightM - startM) * forwardPerUp, heightM }))];
  }
  if (path.shape !== 'curve' || reps.length < 2) return [];
  return (['eccentric', 'concentric'] as const).flatMap((phase) => {
    const seen = reps.map((rep) => rep[phase]).filter((points) => points.length > 0);
    return seen.length < 2 ? [] : [usualCurve(seen)];
  });
}

/** The extent of a plot: metres to both sides and upwards, with a margin. */
export type PlotReach = { readonly sideM: number; readonly upM: number };

export function reachOf(reps: readonly PlottedRep[], toleranceM: number): PlotReach {
  const all = reps.flatMap(({ points }) => points.filter((point) => point !== null));
  const sideM = Math.max(toleranceM * 1.5, 0.02, ...all.map(({ forwardM }) => Math.abs(forwardM) * 1.15));
  return { sideM, upM: Math.max(0.05, ...all.map(({ heightM }) => heightM * 1.06)) };
}

/** A point of the plot in its own pixels: forward to the right, up upwards. */
export function pointInPlot(
  { forwardM, heightM }: PlotPoint,
  { sideM, upM }: PlotReach,
  size: { readonly width: number; readonly height: number },
): PointPx {
  return { xPx: size.width * (0.5 + forwardM / (2 * sideM)), yPx: size.height * (1 - heightM / upM) };
}
