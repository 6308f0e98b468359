import type { Exercise } from '../../exercises/exercise.ts';
import type { Measured, PhaseSpans, RepMeasurement, Span } from '../measurement.ts';
import type { Curve } from '../reps/curve.ts';
import type { EdgedRep } from '../reps/manualEdges.ts';
import type { Move } from '../reps/moves.ts';
import { eccentricDirection } from '../reps/phases.ts';
import { countBounces, furthestBack } from '../reps/turns.ts';
import { isOfBody, type Tracked } from '../source/tracked.ts';
import type { Deviation } from './expectedPath.ts';
import { nineInTen, wanderSpeed } from './wander.ts';

/** The end of a phase is known to this, or to `endSpacings` of the time between frames there, whichever is more. */
const leastEndS = 0.02;
/** Joints are too coarse, and smoothed too much, for anything better. */
const leastEndByJointsS = 0.12;
const endSpacings = 0.6;
/** An end is less sure the more slowly the load gets going … */
const endSharePerS = 0.012;
/** … and the noisier its position: nine in ten errors of moves with known ends under white noise lie within this. */
const endNoises = 140;
/**
 * An end is where a soft move (speed growing with the square of time) leaves a twentieth of its peak speed; a speed that is off
 * by `v` puts it off by v × duration² / (this × range): 2 × 30 × 0.059, of the minimum jerk's profile.
 */
const endPace = 3.5;
/** What smoothing and reading the range leave uncertain, in metres. */
const rangeM = 0.004;
/** How far smoothing may flatten a peak. */
const peakShare = 0.02;
/** How far a part of the body goes its own way beside the load, as a share of the range, and what that does to a peak. */
export const bodyRangeShare = 0.15;
const bodyPeakShare = 0.25;
/** What a body's doubt at each place, as a share of the range, does to the range and to a peak. */
const doubtsInRange = 3;
const doubtsInPeak = 6;
/** How far off a sideways position may be, in metres; and the lean of the upright, as a share of the range. */
const sidewaysM = 0.004;
const unknownUprightShare = Math.tan((1.5 * Math.PI) / 180);
const knownUprightShare = Math.tan((0.35 * Math.PI) / 180);

/** What a rep is measured with. Seconds are lifting seconds. */
export type RepContext = {
  readonly exercise: Exercise;
  readonly up: Curve;
  readonly timesS: readonly number[];
  readonly realTimeFactor: number;
  /** Null without a scale: then there are no lengths and speeds. */
  readonly relativeUncertainty: number | null;
  readonly noise: number;
  readonly wander: number;
  readonly uprightKnown: boolean;
  readonly follows: Tracked['follows'];
  readonly doubtShare: number;
};

/** Measures one rep. `next`: the rep after it, which ends its last pause. */
export function measureRep(
  rep: EdgedRep,
  next: EdgedRep | undefined,
  {
    index,
    deviations,
    context,
  }: { readonly index: number; readonly deviations: readonly Deviation[] | null; readonly context: RepContext },
): Omit<RepMeasurement, 'joints' | 'reach'> {
  const { eccentric, concentric } = rep.moves;
  const spans = spansOf(rep, next);
  const media = (seconds: number) => seconds * context.realTimeFactor;
  const inMedia = (span: Span | null) => span && { startS: media(span.startS), endS: media(span.endS) };
  const whole = rep.span;
  return {
    index,
    startS: media(whole.startS),
    endS: media(whole.endS),
    phases: {
      eccentric: inMedia(spans.eccentric),
      pauseStretched: inMedia(spans.pauseStretched),
      concentric: inMedia(spans.concentric),
      pauseShortened: inMedia(spans.pauseShortened),
    },
    durationsS: {
      eccentric: eccentric && durationOf(spans.eccentric, [eccentric, eccentric], context),
      pauseStretched: durationOf(spans.pauseStretched, movesAround('pauseStretched', rep, next), context),
      concentric: durationOf(spans.concentric, [concentric, concentric], context),
      pauseShortened: durationOf(spans.pauseShortened, movesAround('pauseShortened', rep, next), context),
    },
    sureness: rep.sureness,
    doubts: rep.doubts,
    manualEdges: rep.manualEdges,
    ...speedsOf(rep, { context, durationS: spans.concentric }),
    peakSpeedAtS: media(concentric.peakAtS),
    ...driftOf(deviations, { range: rangeOf(rep), context }),
    ...turnsOf(rep, context),
  };
}

const rangeOf = ({ moves: { eccentric, concentric } }: EdgedRep): number =>
  eccentric ? (eccentric.range + concentric.range) / 2 : concentric.range;

function spansOf({ moves: { eccentric, concentric, beginsWith } }: EdgedRep, next: EdgedRep | undefined): PhaseSpans {
  const between = (from: Move | null, to: Move | null) =>
    from && to && { startS: from.endS, endS: Math.max(from.endS, to.startS) };
  const last = (from: Move | null) =>
    from && next ? { startS: from.endS, endS: Math.max(from.endS, next.span.startS) } : null;
  return {
    eccentric: eccentric && { startS: eccentric.startS, endS: eccentric.endS },
    concentric: { startS: concentric.startS, endS: concentric.endS },
    pauseStretched: beginsWith === 'eccentric' ? between(eccentric, concentric) : last(eccentric),
    pauseShortened: beginsWith === 'eccentric' ? last(concentric) : between(concentric, eccentric),
  };
}

/** The moves that a pause lies between. */
function movesAround(
  pause: 'pauseStretched' | 'pauseShortened',
  { moves: { eccentric, concentric, beginsWith } }: EdgedRep,
  next: EdgedRep | undefined,
): readonly [before: Move, after: Move] {
  const nextBegins = next?.moves[beginsWith] ?? null;
  const lowering = eccentric ?? concentric;
  return pause === 'pauseStretched'
    ? [lowering, beginsWith === 'eccentric' ? concentric : (nextBegins ?? lowering)]
    : [concentric, beginsWith === 'concentric' ? lowering : (nextBegins ?? concentric)];
}

/** `moves`: those whose ends begin and end the span. */
function durationOf(span: Span | null, moves: readonly [Move, Move], context: RepContext): Measured | null {
  if (!span) return null;
  return {
    value: span.endS - span.startS,
    plusMinus: Math.hypot(endUncertainty(span.startS, moves[0], context), endUncertainty(span.endS, moves[1], context)),
  };
}

function endUncertainty(atS: number, move: Move, { timesS, follows, noise, wander, doubtShare }: RepContext): number {
  const after = timesS.findIndex((timeS) => timeS > atS);
  const spacingS = after > 0 ? (timesS[after] ?? 0) - (timesS[after - 1] ?? 0) : 0;
  const lastsS = move.endS - move.startS;
  const least = Math.max(isOfBody(follows) ? leastEndByJointsS : leastEndS, endSpacings * spacingS);
  const byNoiseS = move.range > 0 ? endNoises * (noise / move.range) * Math.sqrt(lastsS * spacingS) : lastsS;
  const byWanderS = move.range > 0 ? (wanderSpeed(wander) * lastsS ** 2) / (endPace * move.range) : lastsS;
  // A move that sets out as minimum jerk does has covered 10 t³ of its way after a share t of its time.
  const byDoubtS = lastsS * Math.cbrt((nineInTen * doubtShare) / 10);
  return Math.hypot(least + endSharePerS * lastsS, Math.min(lastsS, byNoiseS), Math.min(lastsS, byWanderS), byDoubtS);
}

function speedsOf(
  rep: EdgedRep,
  { context, durationS }: { readonly context: RepContext; readonly durationS: Span | null },
): Pick<RepMeasurement, 'romM' | 'meanConcentricMps' | 'peakConcentricMps'> {
  const { relativeUncertainty, wander } = context;
  if (relativeUncertainty === null) return { romM: null, meanConcentricMps: null, peakConcentricMps: null };
  const { concentric } = rep.moves;
  const rom = rangeOf(rep);
  const duration = durationOf(durationS, [concentric, concentric], context);
  const mean = duration && duration.value > 0 ? concentric.range / duration.value : null;
  const { doubtShare } = context;
  const ofBody = isOfBody(context.follows);
  const ownWay = ofBody ? Math.hypot(bodyRangeShare, doubtsInRange * doubtShare) : 0;
  const ownPeak = ofBody ? Math.hypot(bodyPeakShare, doubtsInPeak * doubtShare) : peakShare;
  const ownM = Math.hypot(rangeM, nineInTen * Math.SQRT2 * wander);
  const lengthShare = Math.hypot(relativeUncertainty, ownWay, ownM / Math.max(rom, 0.01));
  return {
    romM: { value: rom, plusMinus: rom * Math.hypot(relativeUncertainty, ownWay) + ownM },
    meanConcentricMps:
      mean === null || !duration
        ? null
        : { value: mean, plusMinus: mean * Math.hypot(lengthShare, duration.plusMinus / duration.value) },
    peakConcentricMps: {
      value: concentric.peakSpeed,
      plusMinus: Math.hypot(concentric.peakSpeed * Math.hypot(relativeUncertainty, ownPeak), wanderSpeed(wander)),
    },
  };
}

function driftOf(
  deviations: readonly Deviation[] | null,
  { range, context }: { readonly range: number; readonly context: RepContext },
): Pick<RepMeasurement, 'driftForwardM' | 'driftBackM' | 'largestDeviation'> {
  const { relativeUncertainty, uprightKnown, realTimeFactor, wander } = context;
  if (!deviations || deviations.length === 0 || relativeUncertainty === null) {
    return { driftForwardM: null, driftBackM: null, largestDeviation: null };
  }
  let forward = deviations[0];
  let back = deviations[0];
  for (const one of deviations) {
    if (!forward || one.forwardM > forward.forwardM) forward = one;
    if (!back || one.forwardM < back.forwardM) back = one;
  }
  const forwardM = Math.max(0, forward?.forwardM ?? 0);
  const backM = Math.max(0, -(back?.forwardM ?? 0));
  const tilt = (uprightKnown ? knownUprightShare : unknownUprightShare) * range;
  const measured = (value: number): Measured => ({
    value,
    plusMinus: Math.hypot(sidewaysM, nineInTen * Math.SQRT2 * wander) + tilt + Math.abs(value) * relativeUncertainty,
  });
  const furthest = forwardM >= backM ? forward : back;
  return {
    driftForwardM: measured(forwardM),
    driftBackM: measured(backM),
    largestDeviation: furthest
      ? { m: measured(furthest.forwardM), atS: furthest.atS * realTimeFactor, heightShare: furthest.heightShare }
      : null,
  };
}

function turnsOf(
  { moves: { eccentric, concentric, beginsWith } }: EdgedRep,
  { exercise, up, noise, wander, relativeUncertainty, follows }: RepContext,
): Pick<RepMeasurement, 'bounces' | 'downOnWayUpM'> {
  if (relativeUncertainty === null || isOfBody(follows)) return { bounces: null, downOnWayUpM: null };
  const towardStretched = eccentricDirection(exercise) === 'down' ? -1 : 1;
  const back = furthestBack(up, {
    fromS: concentric.startS,
    toS: concentric.endS,
    sense: towardStretched === -1 ? 1 : -1,
  });
  const span =
    eccentric &&
    ({ fromS: eccentric.startS, toS: concentric.endS, range: concentric.range, towardStretched, noise } as const);
  return {
    bounces: beginsWith === 'eccentric' && span ? countBounces(up, span) : null,
    downOnWayUpM: { value: back, plusMinus: Math.hypot(Math.max(0.005, 3 * noise), nineInTen * wander) },
  };
}
