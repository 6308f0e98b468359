import { tidy } from '../document/words.ts';
import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { Raise, SessionGrade } from '../grading/grade.ts';
import type { Entry, Review } from '../review/review.ts';
import { type Weight, weights } from '../rubric/rubric.ts';
import type { FlagRow } from '../sheet/flagRows.ts';
import type { Priority } from './letterPlan.ts';
import { sightingsOf, unitsOf, unitsTouched } from './sightings.ts';

/** What priorities are chosen from; `earlier` are the trainee's sessions before, oldest first. */
type PriorityBasis = {
  readonly review: Review;
  readonly grade: SessionGrade;
  readonly catalogue: Catalogue;
  readonly earlier: readonly Review[];
};

/** Remarks on the same thing, over all the exercises that show it. */
type Theme = Priority & {
  /** Largest share of one exercise's reps that shows it, 0-1. */
  readonly share: number;
  readonly rows: readonly FlagRow[];
};

/** A fault with the same text is one thing in every exercise; a remark without a fault stays with its own exercise. */
const themeKey = (row: FlagRow): string =>
  JSON.stringify(row.fault === null ? ['remark', row.entryId, row.criterion] : ['fault', row.fault]);

/**
 * Names a theme by criterion, fault, and the session's first exercise that says the fault in these words, flagged or
 * not; a remark without a fault by its own exercise. So no other flag changes the name.
 */
function themeName({ criterion, fault, entryId }: FlagRow, review: Review, catalogue: Catalogue): string {
  if (fault === null) return `${criterion}-remark-${entryId}`;
  const words = JSON.stringify(fault);
  const faultsOf = (exercise: string) => findExercise(catalogue, exercise)?.faults ?? [];
  const home = review.entries.find(({ exercise }) =>
    faultsOf(exercise).some((each) => each.id === fault.id && JSON.stringify(each) === words),
  );
  return `${criterion}-${fault.id}-${home?.exercise ?? ''}`;
}

const once = (words: readonly string[]): string[] => [...new Set(words.map(tidy).filter((each) => each !== ''))];

const heaviest = (rows: readonly FlagRow[]): Weight =>
  rows.reduce<Weight>(
    (worst, row) => (weights.indexOf(row.weight) > weights.indexOf(worst) ? row.weight : worst),
    'prefer',
  );

type Remark = Priority['remarks'][number] & { readonly weight: Weight };

const remarksOf = ({ entry, own }: { readonly entry: Entry; readonly own: readonly FlagRow[] }): Remark[] =>
  own.flatMap((row) => {
    const [sighting] = sightingsOf([row], entry);
    return sighting === undefined ? [] : [{ flagId: row.flagId, sighting, weight: row.weight }];
  });

/** Heaviest first; equal ones stay in their order. */
const byWeight = (a: Remark, b: Remark): number => weights.indexOf(b.weight) - weights.indexOf(a.weight);

function gainOf(rows: readonly FlagRow[], raises: readonly Raise[]): number {
  const flags = new Set(rows.map((row) => row.flagId));
  const own = raises.filter((raise) => raise.flagIds.some((id) => flags.has(id)));
  return Math.max(0, ...own.map((raise) => raise.gain));
}

function themeOf(rows: readonly FlagRow[], { review, grade, catalogue, earlier }: PriorityBasis): Theme[] {
  const [first] = rows;
  if (first === undefined) return [];
  const perEntry = review.entries.flatMap((entry: Entry) => {
    const own = rows.filter((row) => row.entryId === entry.id);
    return own.length === 0 ? [] : [{ entry, own }];
  });
  const worn = first.fault !== null && cueIsWorn(first.fault.id, earlier);
  const given = worn ? first.fault?.cue.body : first.fault?.cue.outcome;
  const [ownCue] = once(rows.flatMap((row) => (row.cue === row.fault?.cue.outcome ? [] : [row.cue])));
  return [
    {
      key: themeName(first, review, catalogue),
      weight: heaviest(rows),
      criterion: first.criterion,
      criterionName: first.criterionName,
      fault: first.fault,
      exercises: [...new Set(rows.map((row) => row.exercise))],
      sightings: perEntry.flatMap(({ entry, own }) => sightingsOf(own, entry)),
      remarks: perEntry
        .flatMap(remarksOf)
        .sort(byWeight)
        .map(({ flagId, sighting }) => ({ flagId, sighting })),
      notes: once(rows.map((row) => row.note)),
      cue: ownCue ?? given ?? '',
      cueIsNew: worn && ownCue === undefined,
      gain: gainOf(rows, grade.raises),
      share: Math.max(...perEntry.map(({ entry, own }) => unitsTouched(own, entry) / unitsOf(entry))),
      rows,
    },
  ];
}

const severity = (theme: Theme): number => weights.indexOf(theme.weight);

/** Unsafe first, then by what the session gains without it; equal gains by weight and by how often it was seen. */
const byImportance = (a: Theme, b: Theme): number =>
  Number(b.weight === 'stop') - Number(a.weight === 'stop') ||
  b.gain - a.gain ||
  severity(b) - severity(a) ||
  b.share - a.share;

/** One for a new trainee or where something was unsafe; three from grade points 3 (a B) up; two otherwise. */
function mostPriorities(review: Review, grade: SessionGrade, stops: number): number {
  if (stops > 0 || review.trainee.experience === 'new') return 1;
  return grade.state.kind !== 'none' && grade.state.gradePoints >= 3 ? 3 : 2;
}

/** Below this share of an exercise's reps a remark is left to the sheet, unless it is a stop. */
const smallestShare = 0.2;

/**
 * What the letter asks to change, most important first; every unsafe thing; and how many remarks are left to the
 * sheet. `rows` are the review's flags.
 */
export function planPriorities(
  basis: PriorityBasis,
  rows: readonly FlagRow[],
): { readonly priorities: Priority[]; readonly stops: Priority[]; readonly remarksLeft: number } {
  const { review, grade } = basis;
  const groups = Map.groupBy(
    rows.filter((row) => row.weight !== 'keep'),
    themeKey,
  );
  const themes = [...groups.values()].flatMap((own) => themeOf(own, basis)).sort(byImportance);
  const stops = themes.filter((theme) => theme.weight === 'stop');
  const worthSaying = themes.filter((theme) => theme.weight === 'stop' || theme.share >= smallestShare);
  const chosen = worthSaying.slice(0, mostPriorities(review, grade, stops.length));
  const said = new Set(chosen.concat(stops).flatMap((theme) => theme.rows));
  const plain = ({ share: _share, rows: _rows, ...priority }: Theme): Priority => priority;
  return {
    priorities: chosen.map(plain),
    stops: stops.map(plain),
    remarksLeft: [...groups.values()].flat().filter((row) => !said.has(row)).length,
  };
}

/** After this many letters with the same cue, the cue is changed (common practice, no source). */
const mostLetters = 3;

/** Whether a fault was flagged in each of the trainee's last three sessions: its cue has had its chance. */
function cueIsWorn(fault: string, earlier: readonly Review[]): boolean {
  const last = earlier.slice(-mostLetters);
  return (
    last.length === mostLetters &&
    last.every((review) =>
      review.entries.some(({ flags }) => flags.some((flag) => flag.fault === fault && flag.weight !== 'keep')),
    )
  );
}
