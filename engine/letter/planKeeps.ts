import { tidy } from '../document/words.ts';
import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { CriterionScore, SessionGrade } from '../grading/grade.ts';
import { repIndices, ticksOfClip } from '../review/parts.ts';
import type { Entry, Review } from '../review/review.ts';
import type { CriterionId } from '../rubric/rubric.ts';
import { criterionName, exerciseName, type FlagRow } from '../sheet/flagRows.ts';
import type { Keep } from './letterPlan.ts';
import { sightingsOf, unitsOf } from './sightings.ts';

const most = 3;

/**
 * Praise of an exercise, the criterion that weighs most first: the coach's words, else what the rubric says praise
 * looks like.
 */
function praised(entry: Entry, rows: readonly FlagRow[], catalogue: Catalogue): Keep[] {
  const shares = findExercise(catalogue, entry.exercise)?.criteria ?? [];
  const share = (id: CriterionId) => shares.find((each) => each.id === id)?.share ?? 0;
  const groups = [...Map.groupBy(rows, (row) => row.criterion)].sort(([a], [b]) => share(b) - share(a));
  return groups.flatMap(([criterion, own]): Keep[] => {
    const [first] = own;
    if (first === undefined) return [];
    const words = [...new Set(own.map((row) => tidy(row.note)).filter((note) => note !== ''))];
    const anchor = catalogue.rubric.criteria.find((criterion) => criterion.id === first.criterion)?.anchors.keep ?? '';
    const [what = anchor] = words;
    return what === ''
      ? []
      : [
          {
            key: `${criterion}-${entry.id}`,
            kind: 'praised',
            sightings: sightingsOf(own, entry),
            criterion: first.criterionName,
            what,
          },
        ];
  });
}

/** Every rep of the entry carries a tick on the criterion. */
function tickedThroughout(entry: Entry, criterion: CriterionId): boolean {
  return entry.clips.every((clip) => {
    const ticks = ticksOfClip(entry, clip.id).filter((tick) => tick.criterion === criterion);
    if (ticks.some((tick) => tick.reps === 'set')) return true;
    const ticked = new Set(ticks.flatMap((tick) => (tick.reps === 'set' ? [] : tick.reps)));
    return clip.reps.length > 0 && repIndices(clip).every((rep) => ticked.has(rep));
  });
}

const costsNothing = (score: CriterionScore): boolean =>
  score.lookedAt && score.score === 100 && score.reps.every((rep) => rep.flags.length === 0);

/** The criteria of one exercise that were looked at and cost nothing, in one line. */
function fine(entry: Entry, grade: SessionGrade, catalogue: Catalogue): Keep[] {
  const scores = grade.entries.find((each) => each.entryId === entry.id)?.criteria ?? [];
  const ids = scores
    .filter((score) => costsNothing(score) && entry.ticks.some((tick) => tick.criterion === score.criterion))
    .map((score) => score.criterion);
  if (ids.length === 0) return [];
  const throughout = ids.filter((id) => tickedThroughout(entry, id));
  const said = throughout.length > 0 ? throughout : ids;
  const marked = entry.clips.length > 0 && entry.clips.every((clip) => clip.reps.length > 0);
  return [
    {
      key: `fine-${entry.id}`,
      kind: 'fine',
      exercise: exerciseName(catalogue, entry.exercise),
      criteria: said.map((id) => criterionName(catalogue, id)),
      allReps: throughout.length > 0 && marked ? unitsOf(entry) : null,
    },
  ];
}

/** Takes the first of each list, then the second of each, and so on. */
function inTurn<T>(lists: readonly (readonly T[])[]): T[] {
  const longest = Math.max(0, ...lists.map((list) => list.length));
  return Array.from({ length: longest }, (_, index) => lists.flatMap((list) => list.slice(index, index + 1))).flat();
}

const keyOf = (keep: Keep): string => (keep.kind === 'praised' ? keep.what : keep.exercise);

/** Two or three true and specific things to keep: the coach's praise first, spread over the exercises. */
export function planKeeps(review: Review, grade: SessionGrade, catalogue: Catalogue, rows: readonly FlagRow[]): Keep[] {
  const praise = review.entries.map((entry) =>
    praised(
      entry,
      rows.filter((row) => row.entryId === entry.id && row.weight === 'keep'),
      catalogue,
    ),
  );
  const rest = review.entries.map((entry) => fine(entry, grade, catalogue));
  const distinct = new Map([...inTurn(praise), ...inTurn(rest)].map((keep) => [keyOf(keep), keep]));
  return [...distinct.values()].slice(0, most);
}
