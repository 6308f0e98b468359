import type { LetterPlan, Priority } from './letterPlan.ts';

/**
 * One choice for the trainee, where nothing is unsafe: which of several things to begin with, else which of two cues. Choosing
 * is offered because it is pleasant and harmless, not for an effect (McKay et al. 2022, Meta-Psychology: g 0.11).
 */
export function planChoice(priorities: readonly Priority[], stops: number): LetterPlan['choice'] {
  const [first, second] = priorities;
  if (first === undefined || stops > 0) return null;
  if (second !== undefined) return { kind: 'order' };
  const { fault, cue } = first;
  if (fault === null) return null;
  return { kind: 'cue', other: cue === fault.cue.body ? fault.cue.outcome : fault.cue.body };
}
