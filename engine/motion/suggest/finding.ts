import type { Exercise, Fault } from '../../exercises/exercise.ts';
import type { MessageValues } from '../../message/message.ts';
import type { RepMeasurement, Suggestion } from '../measurement.ts';
import type { SuggestionMessageId } from '../suggestionMessages.ts';

/** One rep that shows a finding. */
export type Shown = {
  readonly rep: RepMeasurement;
  /** How far beyond the limit, in the measure's unit; more than 0. */
  readonly missedBy: number;
  /** Media seconds at which to look. */
  readonly atS: number;
  readonly measure: Suggestion['measure'];
  /** What the finding's message says of the rep. */
  readonly says: MessageValues;
};

/** Something that a measure misses, with the reps that show it. */
export type Finding = {
  /** Name within the criterion: part of the suggestion's id. */
  readonly name: string;
  /** Where no fault of the exercise fits. */
  readonly criterion: string;
  /** Ids of faults that say this, the best first. */
  readonly faults: readonly string[];
  /** Where no fault of the exercise fits. */
  readonly weight: 'prefer' | 'adjust';
  /** Up to this far beyond the limit it is fine tuning, whatever the fault usually weighs. */
  readonly smallMiss: number;
  readonly shown: readonly Shown[];
  readonly message: SuggestionMessageId;
  /** What the message says is asked, whichever rep shows it. */
  readonly asks?: MessageValues;
};

/** A person decides that something is unsafe, never a measure. */
const heaviest = (weight: Fault['usualWeight']) => (weight === 'stop' ? 'correct' : weight);

/** A finding as a suggestion, with the first of its faults that the exercise has; null when no rep shows it. */
export function suggestionOf(finding: Finding, exercise: Exercise): Suggestion | null {
  const shown = finding.shown.filter(({ missedBy }) => missedBy > 0);
  const [first, ...rest] = shown;
  if (first === undefined) return null;
  const most = rest.reduce((best, next) => (next.missedBy > best.missedBy ? next : best), first);
  const reps = shown.map(({ rep }) => rep.index);
  const fault = finding.faults
    .map((id) => exercise.faults.find((each) => each.id === id))
    .find((each) => each !== undefined);
  const criterion = fault?.criterion ?? finding.criterion;
  const alsoReps = reps.filter((index) => index !== most.rep.index);
  return {
    id: `${criterion}.${finding.name}`,
    criterion,
    fault: fault?.id ?? null,
    weight: most.missedBy <= finding.smallMiss ? 'prefer' : heaviest(fault?.usualWeight ?? finding.weight),
    reps,
    atS: most.atS,
    measure: most.measure,
    message: {
      id: finding.message,
      values: { rep: most.rep.index, ...most.says, ...finding.asks, alsoCount: alsoReps.length, alsoReps },
    },
  };
}
