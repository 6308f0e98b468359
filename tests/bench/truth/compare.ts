import type { Measured, RepMeasurement, SetMeasurement } from '../../../engine/motion/measurement.ts';
import type { TrueClip, TrueRep } from './trueClips.ts';

/** A counted rep and the true one that it is. */
export type RepPair = { readonly told: RepMeasurement; readonly truth: TrueRep };

/** A number that was told, and the truth of it. */
export type Told = { readonly what: string; readonly told: Measured; readonly truth: number };

/** A clip's measurement held against its truth. */
export type Compared = {
  readonly pairs: readonly RepPair[];
  readonly missed: readonly TrueRep[];
  /** Counted, and no rep. */
  readonly invented: readonly RepMeasurement[];
  /** Seconds that starts, turns and ends are late. */
  readonly edgesS: Readonly<Record<Edge, readonly number[]>>;
  /** What was told in numbers; rendered clips only. */
  readonly told: readonly Told[];
};
export type Edge = 'start' | 'turn' | 'end';
export const edges: readonly Edge[] = ['start', 'turn', 'end'];

type FirstPhase = 'eccentric' | 'concentric';

/** Pairs counted reps with true ones, the nearest turns first, within half a rep's length; a rep is paired once. */
export function compare({ reps }: TrueClip, { reps: counted }: SetMeasurement, first: FirstPhase): Compared {
  const candidates = counted
    .flatMap((told) => reps.map((truth) => ({ told, truth, apartS: apartS(told, truth, first) })))
    .filter(({ truth, apartS: seconds }) => seconds <= lengthS(truth, reps) / 2)
    .sort((one, other) => one.apartS - other.apartS);
  const pairs: RepPair[] = [];
  for (const { told, truth } of candidates) {
    if (!pairs.some((pair) => pair.told === told || pair.truth === truth)) pairs.push({ told, truth });
  }
  pairs.sort((one, other) => one.told.startS - other.told.startS);
  return {
    pairs,
    missed: reps.filter((truth) => !pairs.some((pair) => pair.truth === truth)),
    invented: counted.filter((told) => !pairs.some((pair) => pair.told === told)),
    edgesS: {
      start: errorsOf(pairs, 'start', first),
      turn: errorsOf(pairs, 'turn', first),
      end: errorsOf(pairs, 'end', first),
    },
    told: pairs.flatMap((pair, index) => toldOf(pair, { first, last: index === pairs.length - 1 })),
  };
}

/** Start, turn and end of a measured rep; null = the clip does not show it. */
export function edgesOf({ phases }: RepMeasurement, first: FirstPhase): Readonly<Record<Edge, number | null>> {
  const second = first === 'eccentric' ? 'concentric' : 'eccentric';
  return {
    start: phases[first]?.startS ?? null,
    turn: phases[first]?.endS ?? null,
    end: phases[second]?.endS ?? null,
  };
}

const trueEdges = ({ startS, turnS, endS }: TrueRep) => ({ start: startS, turn: turnS, end: endS });

function errorsOf(pairs: readonly RepPair[], edge: Edge, first: FirstPhase): number[] {
  return pairs.flatMap(({ told, truth }) => {
    const toldS = edgesOf(told, first)[edge];
    const trueS = trueEdges(truth)[edge];
    return toldS === null || trueS === null ? [] : [toldS - trueS];
  });
}

function apartS(told: RepMeasurement, truth: TrueRep, first: FirstPhase): number {
  for (const edge of ['turn', 'start', 'end'] as const) {
    const toldS = edgesOf(told, first)[edge];
    const trueS = trueEdges(truth)[edge];
    if (toldS !== null && trueS !== null) return Math.abs(toldS - trueS);
  }
  return Number.POSITIVE_INFINITY;
}

/** How long a rep lasts; one that the clip cuts off, as long as the longest of the others. */
function lengthS({ startS, endS }: TrueRep, reps: readonly TrueRep[]): number {
  if (startS !== null && endS !== null) return endS - startS;
  return Math.max(2, ...reps.map((rep) => (rep.startS !== null && rep.endS !== null ? rep.endS - rep.startS : 0)));
}

function toldOf(
  { told, truth: { rendered } }: RepPair,
  { first, last }: { readonly first: FirstPhase; readonly last: boolean },
): Told[] {
  if (rendered === null) return [];
  const { durations_s: durations, bar_x_range_m: drift, commanded_drift_m: strayed } = rendered;
  const [back, forward] = first === 'concentric' || drift === null ? [strayed, strayed] : drift;
  const outer = first === 'eccentric' ? 'pauseShortened' : 'pauseStretched';
  const all: readonly (readonly [what: string, told: Measured | null, truth: number])[] = [
    ['eccentric s', told.durationsS.eccentric, durations.eccentric],
    ['concentric s', told.durationsS.concentric, durations.concentric],
    [
      'pause, stretched, s',
      last && outer === 'pauseStretched' ? null : told.durationsS.pauseStretched,
      durations.bottom_pause,
    ],
    [
      'pause, shortened, s',
      last && outer === 'pauseShortened' ? null : told.durationsS.pauseShortened,
      durations.top_pause,
    ],
    ['range m', told.romM, rendered.rom_m],
    ['mean speed m/s', told.meanConcentricMps, rendered.concentric_mean_velocity_mps],
    ['peak speed m/s', told.peakConcentricMps, rendered.concentric_peak_velocity_mps],
    ['drift forward m', told.driftForwardM, Math.max(0, forward)],
    ['drift back m', told.driftBackM, Math.max(0, -back)],
  ];
  return all.flatMap(([what, value, truth]) => (value === null ? [] : [{ what, told: value, truth }]));
}
