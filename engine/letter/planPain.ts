import { tidy } from '../document/words.ts';
import { type Catalogue, findExercise, untranslated } from '../exercises/catalogue.ts';
import { type PainReading, readPainNote } from '../pain/painNote.ts';
import { isHeldByPain, isMild, isOver, painStep } from '../pain/painRule.ts';
import type { FindingMessageId, ProgrammeFinding } from '../programme/finding.ts';
import type { Entry, Review } from '../review/review.ts';
import { exerciseName } from '../sheet/flagRows.ts';
import type { OfExercise, PlannedPain } from './letterPlan.ts';

/** What pain holds back in a session. */
export type HeldBack = {
  readonly reading: PainReading;
  /** Ids of the entries whose lift loads the area. */
  readonly entries: ReadonlySet<string>;
  /** Whether a programme finding asks for more of a lift that loads the area. */
  readonly holdsFinding: (finding: ProgrammeFinding) => boolean;
  /** A finding as it may be said: of a lift that loads the area no set is added back. */
  readonly withoutMore: (finding: ProgrammeFinding) => ProgrammeFinding;
};

/** Findings that take work away: they may stand while pain settles. */
const lessWork: ReadonlySet<FindingMessageId> = new Set(['volume', 'volumeOfOne', 'weeklyVolume', 'spacing'] as const);

/** The exercises that a finding asks to do instead or besides. */
const asksFor = ({ advice }: ProgrammeFinding): readonly string[] => (advice.kind === 'exercise' ? advice.to : []);

/** Reads a session's note on pain against its lifts. */
export function heldBack(review: Review, catalogue: Catalogue): HeldBack {
  const reading = readPainNote(review.session.painNote);
  const original = untranslated(catalogue);
  const isHeld = (id: string): boolean => isHeldByPain(reading, findExercise(original, id));
  const holds = ({ exercise }: Entry): boolean => isHeld(exercise);
  const entries = new Set(review.entries.filter(holds).map(({ id }) => id));
  const stops = painStep(reading) === 'stop';
  const holdsFinding = (finding: ProgrammeFinding): boolean =>
    (stops || !lessWork.has(finding.message.id)) &&
    (finding.entryIds.some((id) => entries.has(id)) || asksFor(finding).some(isHeld) || (stops && everywhere(reading)));
  const withoutMore = (finding: ProgrammeFinding): ProgrammeFinding => {
    const { id, values } = finding.message;
    if (!('addsBack' in values) || !finding.entryIds.some((one) => entries.has(one))) return finding;
    return { ...finding, message: { id, values: { ...values, addsBack: 'no' } } };
  };
  return { reading, entries, holdsFinding, withoutMore };
}

const everywhere = (reading: PainReading): boolean => reading.kind === 'pain' && reading.areas === 'all';

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
