import type { Exercise, Fault } from '../../exercises/exercise.ts';
import type { MessageValues } from '../../message/message.ts';
import type { PhaseName, RepMeasurement, Span } from '../measurement.ts';
import type { Suggestion, SuggestionMessageId } from '../suggestion.ts';

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
  readonly severity: 'prefer' | 'adjust';
  /** Up to this far beyond the limit it is fine tuning, whatever the fault usually weighs. */
  readonly smallMiss: number;
  readonly shown: readonly Shown[];
  readonly message: SuggestionMessageId;
  /** What the message says is asked, whichever rep shows it. */
  readonly asks?: MessageValues;
};

/** A person decides that something is unsafe, never a measure. */
const heaviest = (severity: Fault['usualSeverity']) => (severity === 'stop' ? 'correct' : severity);

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
    severity: most.missedBy <= finding.smallMiss ? 'prefer' : heaviest(fault?.usualSeverity ?? finding.severity),
    reps,
    atS: most.atS,
    measure: most.measure,
    message: {
      id: finding.message,
      values: { rep: most.rep.index, ...most.says, ...finding.asks, alsoCount: alsoReps.length, alsoReps },
    },
  };
}

const middle = ({ startS, endS }: Span): number => (startS + endS) / 2;

/** The middle of a phase, in media seconds; that of the rep where the phase is not there. */
export const duringPhase = (rep: RepMeasurement, phase: PhaseName): number => middle(rep.phases[phase] ?? rep);

/** When the target muscles are longest, in media seconds: within the pause, or where the load turns round. */
export function atStretchedEnd(rep: RepMeasurement): number {
  const { pauseStretched, eccentric, concentric } = rep.phases;
  if (pauseStretched) return middle(pauseStretched);
  return eccentric?.endS ?? concentric?.startS ?? middle(rep);
}

/** When the target muscles are shortest, in media seconds. */
export function atShortenedEnd(rep: RepMeasurement): number {
  const { pauseShortened, concentric, eccentric } = rep.phases;
  if (pauseShortened) return middle(pauseShortened);
  return concentric?.endS ?? eccentric?.startS ?? middle(rep);
}

/** Where an end of the range is in the picture, or else by its muscles. */
export function whereEndIs(
  { lowerEnd }: Exercise,
  end: 'stretched' | 'shortened',
): 'bottom' | 'top' | 'stretchedEnd' | 'shortenedEnd' {
  if (lowerEnd === 'neither') return `${end}End`;
  return end === lowerEnd ? 'bottom' : 'top';
}

/** What the eccentric does: it lowers the load unless the target muscles are longest at another end. */
export const eccentricVerb = ({ lowerEnd }: Exercise): 'lowers' | 'returns' =>
  lowerEnd === 'stretched' ? 'lowers' : 'returns';
