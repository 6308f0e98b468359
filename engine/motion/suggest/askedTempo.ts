import type { Exercise, Goal } from '../../exercises/exercise.ts';
import type { MessageValues } from '../../message/message.ts';
import { type Plan, tempoOfPlan } from '../../review/plan.ts';
import { parseTempo, type Tempo } from '../../time/tempo.ts';

/** How long one phase should last, in lifting seconds. */
export type AskedPhase = {
  /** From-to that is as asked. */
  readonly fromS: number;
  readonly toS: number;
  /** Longer than this is too long: what lasts a little longer than asked costs little. */
  readonly tooLongFromS: number;
  /** Who asks, and for how long, as it is said. */
  readonly says: MessageValues;
};
export type AskedTempo = Readonly<Record<'eccentric' | 'pauseStretched' | 'pauseShortened', AskedPhase>>;

/**
 * A plan's time is counted in the head: it is met within half a second or a quarter of it, whichever is more, but never by
 * less than a half of it (common practice, no source).
 */
const planSlackS = (seconds: number) => Math.max(0.5, 0.25 * seconds);

/** Too long begins a second, or a quarter, beyond what is asked: a breath between reps is no fault (common practice). */
const lateSlackS = (seconds: number) => Math.max(1, 0.25 * seconds);

const tenths = (seconds: number): number => Math.round(seconds * 10) / 10;

function targetSays(fromS: number, toS: number): MessageValues {
  const asked = fromS === toS ? 'targetExactly' : fromS === 0 ? 'targetAtMost' : 'targetBetween';
  return { asked, askedFromS: tenths(fromS), askedToS: tenths(toS) };
}

const fromTarget = ([fromS, toS]: readonly [number, number]): AskedPhase => ({
  fromS,
  toS,
  tooLongFromS: toS + lateSlackS(toS),
  says: targetSays(fromS, toS),
});

const fromPlan = (seconds: number): AskedPhase => ({
  fromS: Math.max(seconds / 2, seconds - planSlackS(seconds)),
  toS: seconds + planSlackS(seconds),
  tooLongFromS: seconds + lateSlackS(seconds),
  says: { asked: seconds === 0 ? 'planNone' : 'plan', askedFromS: tenths(seconds), askedToS: tenths(seconds) },
});

/**
 * What is asked of each phase: the plan's tempo where it has one, else the exercise's target for the goal. A plan that
 * gives the working phase (the eccentric; in a hold the hold) no time leaves it to the target.
 */
export function askedTempo(exercise: Exercise, goal: Goal, plan: Plan | null): AskedTempo {
  const target = exercise.targets.tempo[goal];
  const written = tempoOfPlan(plan);
  const planned: Tempo | null = written === null ? null : parseTempo(written);
  const isHold = exercise.beginsWith === 'hold';
  const asked = (plannedS: number | undefined, goalS: readonly [number, number], works: 'works' | 'rests') =>
    plannedS === undefined || (works === 'works' && plannedS === 0) ? fromTarget(goalS) : fromPlan(plannedS);
  return {
    eccentric: asked(planned?.eccentricS, target.eccentricS, 'works'),
    pauseStretched: asked(planned?.pauseStretchedS, target.pauseStretchedS, isHold ? 'works' : 'rests'),
    pauseShortened: asked(planned?.pauseShortenedS, target.pauseShortenedS, 'rests'),
  };
}
