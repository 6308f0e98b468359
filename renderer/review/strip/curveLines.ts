import { extent, max } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { Curves, PhaseName, RepMeasurement } from '../../../engine/motion/measurement.ts';

type Value = number | null;

/** SVG path data of values over places along the strip (0-1); what was not seen is a gap. */
export const curveLine = (
  values: readonly Value[],
  shares: readonly number[],
  toY: (value: number) => number,
): string =>
  line<Value>()
    .defined((value, frame) => value !== null && shares[frame] !== undefined)
    .x((_, frame) => shares[frame] ?? 0)
    .y((value) => toY(value ?? 0))
    .digits(5)(values) ?? '';

/** Heights as they are drawn: metres, or pixels upwards where there is no scale. */
function heightsOf({ heightM, positionPx }: Curves): readonly Value[] {
  if (heightM.some((value) => value !== null)) return heightM;
  return positionPx.map((point) => (point === null ? null : -point.yPx));
}

const edge = 0.08;

/** Height and speed as lines in a box of height 1: height from its least to its most, speed about the middle. */
export function curvesOf(
  curves: Curves,
  shares: readonly number[],
): { readonly height: string; readonly speed: string } {
  const heights = heightsOf(curves);
  const known = heights.filter((value) => value !== null);
  const [least = 0, most = 0] = extent(known);
  const span = Math.max(1e-6, most - least);
  const fastest = Math.max(1e-6, max(curves.speedMps, (value) => Math.abs(value ?? 0)) ?? 0);
  return {
    height: curveLine(heights, shares, scaleLinear([least, least + span], [1 - edge, edge])),
    speed: curveLine(curves.speedMps, shares, scaleLinear([-fastest, fastest], [1 - edge, edge])),
  };
}

/** A phase of a rep along the strip, in shares of the clip's length. */
export type PhaseStretch = {
  readonly rep: number;
  readonly phase: PhaseName;
  readonly from: number;
  readonly to: number;
};

const inOrder: readonly PhaseName[] = ['eccentric', 'pauseStretched', 'concentric', 'pauseShortened'];

/** Every phase of every rep along a clip of so many media seconds. */
export const phaseStretches = (reps: readonly RepMeasurement[], clipS: number): readonly PhaseStretch[] =>
  reps.flatMap((rep) =>
    inOrder.flatMap((phase) => {
      const span = rep.phases[phase];
      if (span === null || clipS <= 0 || span.endS <= span.startS) return [];
      return [{ rep: rep.index, phase, from: span.startS / clipS, to: span.endS / clipS }];
    }),
  );
