import type { Catalogue } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import type { CriterionId } from '../rubric/rubric.ts';
import type { Entry, Flag, Review, Tick } from './review.ts';

type Sides = { readonly from: Catalogue; readonly to: Catalogue };

/** The criterion, or the next coarser one that an exercise is judged by; undefined when none is. */
function judgedAs(criterion: CriterionId, exercise: Exercise, { from, to }: Sides): CriterionId | undefined {
  const known = [...from.rubric.criteria, ...to.rubric.criteria];
  const judged = new Set(exercise.criteria.map((one) => one.id));
  const coarserThan = (id: CriterionId): CriterionId | undefined =>
    exercise.alsoJudged?.find((one) => one.id === id)?.partOf ?? known.find((one) => one.id === id)?.partOf;
  let id: CriterionId | undefined = criterion;
  for (let step = 0; id !== undefined && !judged.has(id) && step < known.length; step++) id = coarserThan(id);
  return id !== undefined && judged.has(id) ? id : undefined;
}

function movedFlag(flag: Flag, exercise: Exercise, sides: Sides): Flag {
  const known = flag.fault === null ? undefined : exercise.faults.find((fault) => fault.id === flag.fault);
  if (known !== undefined) return { ...flag, criterion: known.criterion };
  const criterion = judgedAs(flag.criterion, exercise, sides) ?? flag.criterion;
  return { ...flag, criterion, fault: null };
}

/** A tick says "fine" of its own criterion alone: it stays where that is judged, and is dropped where it isn't. */
const keptTicks = (ticks: readonly Tick[], exercise: Exercise): Tick[] =>
  ticks.filter((tick) => exercise.criteria.some((one) => one.id === tick.criterion));

function movedEntry(entry: Entry, sides: Sides): Entry {
  const exercise = sides.to.exercises.find((one) => one.id === entry.exercise);
  if (exercise === undefined) return entry;
  return {
    ...entry,
    flags: entry.flags.map((flag) => movedFlag(flag, exercise, sides)),
    ticks: keptTicks(entry.ticks, exercise),
  };
}

/**
 * A review as another version of the rubric reads it: each flag goes to the criterion its fault has there; one without a
 * fault stays, or goes to the next coarser criterion that is judged there. A fault the other version doesn't know is left out, its
 * flag stays. Ticks on criteria that aren't judged there are dropped; none is made up, so that coverage stays honest.
 */
export function reviewUnder(review: Review, sides: Sides): Review {
  const { id, version } = sides.to.rubric;
  return { ...review, rubric: { id, version }, entries: review.entries.map((entry) => movedEntry(entry, sides)) };
}
