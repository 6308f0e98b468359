import type { Exercise, Fault } from '../../exercises/exercise.ts';
import type { RepMeasurement, Suggestion } from '../measurement.ts';

/** One rep that shows a finding. */
export type Shown = {
  readonly rep: RepMeasurement;
  /** How far beyond the limit, in the measure's unit; more than 0. */
  readonly missedBy: number;
  /** Media seconds at which to look. */
  readonly atS: number;
  readonly measure: Suggestion['measure'];
  /** What the rep does, to follow "Rep 2": "lowers in 1.2 s ± 0.1 s". */
  readonly does: string;
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
  /** What is asked, as a clause: "the target is 2 to 3 s". */
  readonly asked: string;
};

/** A person decides that something is unsafe, never a measure. */
const heaviest = (weight: Fault['usualWeight']) => (weight === 'stop' ? 'correct' : weight);

const joined = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** "Reps 1 to 3 and 5 show it too." */
function alsoShown(indices: readonly number[]): string {
  if (indices.length === 0) return '';
  const runs: number[][] = [];
  for (const index of indices) {
    const run = runs.at(-1);
    if (run !== undefined && run.at(-1) === index - 1) run.push(index);
    else runs.push([index]);
  }
  const words = runs.flatMap((run) => (run.length < 3 ? run.map(String) : [`${run[0]} to ${run.at(-1)}`]));
  return indices.length === 1 ? ` Rep ${words[0]} shows it too.` : ` Reps ${joined.format(words)} show it too.`;
}

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
  const others = alsoShown(reps.filter((index) => index !== most.rep.index));
  return {
    id: `${criterion}.${finding.name}`,
    criterion,
    fault: fault?.id ?? null,
    weight: most.missedBy <= finding.smallMiss ? 'prefer' : heaviest(fault?.usualWeight ?? finding.weight),
    reps,
    atS: most.atS,
    measure: most.measure,
    sentence: `Rep ${most.rep.index} ${most.does}; ${finding.asked}.${others}`,
  };
}
