import type { Exercise, Goal, TempoTarget } from '../../exercises/exercise.ts';
import { parseTempo } from '../../time/tempo.ts';

/** Seconds that a phase may last, and how to say so: "the target is 2 to 3 s". */
export type WantedSpan = { readonly fromS: number; readonly toS: number; readonly words: string };

/** What is asked of the phases that are judged. */
export type WantedTempo = {
  readonly eccentric: WantedSpan;
  readonly longPause: WantedSpan;
  readonly shortPause: WantedSpan;
};

function target([fromS, toS]: TempoTarget['eccentricS']): WantedSpan {
  const span = fromS === toS ? `${toS} s` : fromS === 0 ? `up to ${toS} s` : `${fromS} to ${toS} s`;
  return { fromS, toS, words: `the target is ${span}` };
}

/** A planned time is counted in the head: it is met within half a second, a shorter one within half of itself. */
const planned = (seconds: number): WantedSpan => ({
  fromS: seconds - Math.min(0.5, seconds / 2),
  toS: seconds + 0.5,
  words: seconds === 0 ? 'the plan asks for none' : `the plan asks for ${seconds} s`,
});

/** The plan's tempo where one is written down, else the exercise's target for the goal; null for a hold. */
export function wantedTempo(
  exercise: Exercise,
  goal: Goal,
  plan: { readonly tempo?: string | undefined } | null,
): WantedTempo | null {
  if (exercise.beginsWith === 'hold') return null;
  const tempo = plan?.tempo === undefined ? null : parseTempo(plan.tempo);
  if (tempo !== null) {
    return {
      eccentric: planned(tempo.eccentricS),
      longPause: planned(tempo.longPauseS),
      shortPause: planned(tempo.shortPauseS),
    };
  }
  const { eccentricS, longPauseS, shortPauseS } = exercise.targets.tempo[goal];
  return { eccentric: target(eccentricS), longPause: target(longPauseS), shortPause: target(shortPauseS) };
}
