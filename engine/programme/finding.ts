import type { Catalogue } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import type { Message } from '../message/message.ts';
import type { EqualPlan } from '../review/plan.ts';
import type { Entry, Review } from '../review/review.ts';
import type { Weight } from '../rubric/rubric.ts';

/** What a finding says: what was found, why it matters, what to do about it, and where that comes from. */
export type FindingMessageId =
  | 'repsForGrowth'
  | 'repsForStrength'
  | 'effort'
  | 'order'
  | 'loadOrder'
  | 'setOrder'
  | 'doubledLoad'
  | 'shortEndLoad'
  | 'shortEndPause'
  | 'shortHolds'
  | 'curtailedRange'
  | 'profileBalance'
  | 'weeklyVolume'
  | 'spacing';

/** Something that the plan of a session could do better. */
export type ProgrammeFinding = {
  readonly id: string;
  /** Findings of the same kind on different entries share it: "rep-range". */
  readonly kind: string;
  readonly weight: Weight;
  readonly entryIds: readonly string[];
  /** Names in it are in the language of the catalogue. */
  readonly message: Message<FindingMessageId>;
};

/** An entry with its exercise, in the order of the session; `plan` undefined when none is known. */
export type PlannedEntry = {
  readonly entry: Entry;
  readonly exercise: Exercise;
  readonly plan: EqualPlan | undefined;
};

/** The entries whose exercise the library holds, in order. */
export function plannedEntries(review: Review, catalogue: Catalogue): PlannedEntry[] {
  return review.entries.flatMap((entry) => {
    const exercise = catalogue.exercises.find((one) => one.id === entry.exercise);
    const [first] = entry.plan?.sets ?? [];
    const plan = first && { ...first, sets: entry.plan?.sets.length ?? 0 };
    return exercise === undefined ? [] : [{ entry, exercise, plan }];
  });
}

/** The muscles that both exercises train directly. */
export function sharedMuscles(one: Exercise, other: Exercise): string[] {
  return one.muscles.direct.filter((muscle) => other.muscles.direct.includes(muscle));
}

/** Every pair of a session's entries, the earlier one first. */
export function pairsOf(entries: readonly PlannedEntry[]): (readonly [PlannedEntry, PlannedEntry])[] {
  return entries.flatMap((earlier, i) => entries.slice(i + 1).map((later) => [earlier, later] as const));
}
