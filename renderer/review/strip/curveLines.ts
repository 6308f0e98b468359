import type { Curves, PhaseName, RepMeasurement } from '../../../engine/motion/measurement.ts';

type Value = number | null;

const figure = (value: number): string => String(Math.round(value * 100_000) / 100_000);

/** SVG path data of values over places along the strip (0-1); what was not seen is a gap. */
export function curveLine(values: readonly Value[], shares: readonly number[], toY: (value: number) => number): string {
  let path = '';
  let pen: 'up' | 'down' = 'up';
  values.forEach((value, frame) => {
    const share = shares[frame];
    if (value === null || share === undefined) {
      pen = 'up';
      return;
    }
    path += `${pen === 'up' ? 'M' : 'L'}${figure(share)} ${figure(toY(value))}`;
    pen = 'down';
  });
  return path;
}

/** Heights as they are drawn: metres, or pixels upwards where there is no scale. */
function heightsOf({ heightM, placePx }: Curves): readonly Value[] {
  if (heightM.some((value) => value !== null)) return heightM;
  return placePx.map((point) => (point === null ? null : -point.yPx));
}

const edge = 0.08;

/** Height and speed as lines in a box of height 1: height from its least to its most, speed about the middle. */
export function curvesOf(
  curves: Curves,
  shares: readonly number[],
): { readonly height: string; readonly speed: string; readonly begins: 'high' | 'low' } {
  const heights = heightsOf(curves);
  const known = heights.filter((value) => value !== null);
  const least = known.reduce((low, value) => Math.min(low, value), Number.POSITIVE_INFINITY);
  const most = known.reduce((high, value) => Math.max(high, value), Number.NEGATIVE_INFINITY);
  const span = Math.max(1e-6, most - least);
  const fastest = curves.speedMps.reduce<number>((high, value) => Math.max(high, Math.abs(value ?? 0)), 1e-6);
  return {
    begins: (known[0] ?? most) - least > span / 2 ? 'high' : 'low',
    height: curveLine(heights, shares, (value) => 1 - edge - ((value - least) / span) * (1 - 2 * edge)),
    speed: curveLine(curves.speedMps, shares, (value) => 0.5 - (value / fastest) * (0.5 - edge)),
  };
}

/** A phase of a rep along the strip, in shares of the clip's length. */
export type PhaseStretch = {
  readonly rep: number;
  readonly phase: PhaseName;
  readonly from: number;
  readonly to: number;
};

const inOrder: readonly PhaseName[] = ['eccentric', 'longPause', 'concentric', 'shortPause'];

/** Every phase of every rep along a clip of so many media seconds. */
export const phaseStretches = (reps: readonly RepMeasurement[], clipS: number): readonly PhaseStretch[] =>
  reps.flatMap((rep) =>
    inOrder.flatMap((phase) => {
      const span = rep.phases[phase];
      if (span === null || clipS <= 0 || span.endS <= span.startS) return [];
      return [{ rep: rep.index, phase, from: span.startS / clipS, to: span.endS / clipS }];
    }),
  );
