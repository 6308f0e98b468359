import type { HeldBack } from '../cautions/heldBack.ts';
import { tidy } from '../document/words.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import { isMild, isOver, painStep } from '../pain/painRule.ts';
import type { ProgrammeFinding } from '../programme/finding.ts';
import type { Entry, Review } from '../review/review.ts';
import { exerciseName } from '../sheet/flagRows.ts';
import type { OfExercise, PlannedPain } from './letterPlan.ts';

/** What the letter says of pain; null without any. */
export function planPain(
  review: Review,
  catalogue: Catalogue,
  { reading, entries, holdsFinding }: HeldBack,
  findings: readonly ProgrammeFinding[],
): PlannedPain | null {
  const step = painStep(reading);
  if (reading.kind === 'none' || step === 'none') return null;
  const held = review.entries.filter(({ id }) => entries.has(id));
  const namesOf = (entries: readonly Entry[]): string[] => [
    ...new Set(entries.map(({ exercise }) => exerciseName(catalogue, exercise))),
  ];
  const waiting = new Set(findings.filter(holdsFinding).flatMap(({ entryIds }) => entryIds));
  const exercises = new Map(
    held.map(({ exercise }): [string, OfExercise] => [
      exercise,
      { exerciseId: exercise, exercise: exerciseName(catalogue, exercise) },
    ]),
  );
  return {
    words: tidy(review.session.painNote),
    step,
    mild: isMild(reading),
    over: isOver(reading),
    redFlag: reading.redFlag,
    held: [...exercises.values()],
    holdsAll: held.length === review.entries.length,
    remarksOn: namesOf(
      held.filter(({ flags }) => flags.some(({ severity }) => severity !== 'keep' && severity !== 'stop')),
    ),
    findingsOn: namesOf(review.entries.filter(({ id }) => waiting.has(id))),
  };
}
