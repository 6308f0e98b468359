import type { Exercise, Goal } from '../../../engine/exercises/exercise.ts';
import type { Measured, PhaseName, RepMeasurement } from '../../../engine/motion/measurement.ts';
import { type AskedPhase, askedTempo } from '../../../engine/motion/suggest/askedTempo.ts';
import { type Plan, tempoOfPlan } from '../../../engine/review/plan.ts';
import { parseTempo } from '../../../engine/time/tempo.ts';
import { decimal, phaseNames, phaseWords } from '../../base/measureWords.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';

/** The target time from and to, in lifting seconds, and what still passes; null = no target. */
export type TempoBand = {
  readonly asked: readonly [number, number];
  readonly passes: Pick<AskedPhase, 'fromS' | 'toS' | 'tooLongFromS'> | null;
};

export type TempoToMeet = {
  readonly from: 'plan' | 'exercise';
  /** The plan's tempo as it is written, or what the target is for. */
  readonly words: string;
  /** Null where no time is asked for. */
  readonly bands: Readonly<Record<PhaseName, TempoBand | null>>;
};

/** The target tempo of a set: the plan's where it has one, else the exercise's for the trainee's goal. */
export function tempoToMeet(plan: Plan | undefined, exercise: Exercise | null, goal: Goal): TempoToMeet | null {
  if (exercise === null) return null;
  const passes = askedTempo(exercise, goal, plan ?? null);
  const target = exercise.targets.tempo[goal];
  const written = tempoOfPlan(plan);
  const planned = written === null ? null : parseTempo(written);
  const asked = (
    plannedS: number | null | undefined,
    targetS: TempoBand['asked'] | null,
  ): TempoBand['asked'] | null => {
    if (plannedS === undefined) return targetS;
    return plannedS === null ? null : [plannedS, plannedS];
  };
  const band = (times: TempoBand['asked'] | null, within: TempoBand['passes']): TempoBand | null =>
    times === null ? null : { asked: times, passes: within };
  return {
    from: planned === null ? 'exercise' : 'plan',
    words: planned === null || written === null ? sayMeasures('targetFor', { goal }) : written,
    bands: {
      eccentric: band(asked(planned?.eccentricS, target.eccentricS), passes.eccentric),
      pauseStretched: band(asked(planned?.pauseStretchedS, target.pauseStretchedS), passes.pauseStretched),
      concentric: band(asked(planned?.concentricS, target.concentricS), null),
      pauseShortened: band(asked(planned?.pauseShortenedS, target.pauseShortenedS), passes.pauseShortened),
    },
  };
}

/** How far a time misses its target, in seconds; 0 where it passes within its uncertainty. */
export function outsideS({ value, plusMinus }: Measured, band: TempoBand | null): number {
  if (band === null || band.passes === null) return 0;
  const [fromS, toS] = band.asked;
  if (value + plusMinus < band.passes.fromS) return value - fromS;
  return value - plusMinus > band.passes.tooLongFromS ? value - toS : 0;
}

const missedWords = (phase: PhaseName, awayS: number): string =>
  sayMeasures('missedTempo', {
    phase: phaseWords(phase),
    seconds: decimal(Math.abs(awayS), 1),
    away: awayS < 0 ? 'short' : 'long',
  });

/** Where a rep's tempo misses its target: "eccentric 0.4 s too short; pause, stretched 0.7 s too short"; '' when nothing is. */
export function tempoWords({ durationsS }: RepMeasurement, { bands }: TempoToMeet): string {
  return phaseNames
    .flatMap((phase) => {
      const duration = durationsS[phase];
      const away = duration === null ? 0 : outsideS(duration, bands[phase]);
      return away === 0 ? [] : [missedWords(phase, away)];
    })
    .join('; ');
}
