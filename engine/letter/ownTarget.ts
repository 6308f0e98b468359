import type { Exercise } from '../exercises/exercise.ts';
import type { Entry, Review } from '../review/review.ts';
import { parseTempo } from '../time/tempo.ts';

/** Words of a cue or drill that slow a lift down, as the library says them in English: counts, beats, calm ways down. */
const slowing =
  /\b(?:count(?:s|ed|ing)?|metronome|beats?|slow(?:ly|er)?|calm(?:ly)?|seconds? (?:down|up|on the way)|planned seconds)\b|-second count/i;
/** Words of a proof that time the lowering. */
const timing = /\blowering\b[^.]*\b(?:time|takes|seconds?)|\bcounts?\b/i;

/** The heaviest sets that are lifted for few reps (common practice). */
const fewReps = 6;

/**
 * Whether a lift is meant to go as fast as control allows: it starts with the pull, is heavy or trained for strength, and neither the
 * plan nor its target asks for a slow way down.
 */
export function isMeantFast(exercise: Exercise, entry: Entry, review: Review): boolean {
  const planned = entry.plan?.sets.map(({ tempo }) => (tempo === undefined ? null : parseTempo(tempo))) ?? [];
  if (planned.some((tempo) => tempo !== null && tempo.eccentricS >= 2)) return false;
  const { eccentricS, concentricS } = exercise.targets.tempo[review.trainee.goal];
  const heavy = review.trainee.goal === 'strength' || (entry.plan?.sets.some(({ reps }) => reps <= fewReps) ?? false);
  return heavy && concentricS === null && exercise.beginsWith === 'concentric' && eccentricS[0] <= 1;
}

/** Whether a cue or drill in the library's English words would slow the lift down. */
export const slowsDown = (words: string): boolean => slowing.test(words);

/** Whether a proof in the library's English words measures how slow the way down is. */
export const timesTheLowering = (words: string): boolean => timing.test(words);
