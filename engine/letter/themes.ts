import { tidy } from '../document/words.ts';
import { type Catalogue, findExercise, untranslated } from '../exercises/catalogue.ts';
import type { Fault } from '../exercises/exercise.ts';
import type { SessionGrade } from '../grading/grade.ts';
import type { Entry, Review } from '../review/review.ts';
import { type Severity, severities } from '../rubric/rubric.ts';
import type { JudgingRow } from '../sheet/flagRows.ts';
import type { Priority } from './letterPlan.ts';
import { addsLittle } from './nearlySame.ts';
import { isMeantFast, slowsDown, timesTheLowering } from './ownTarget.ts';
import { sightingsOf, unitsOpened, unitsTouched } from './sightings.ts';
import { isUrgent } from './urgent.ts';

/** What themes are made from; `earlier` are the trainee's sessions before, oldest first. */
export type ThemeBasis = {
  readonly review: Review;
  readonly grade: SessionGrade;
  readonly catalogue: Catalogue;
  readonly earlier: readonly Review[];
  /** Points that the session would gain without some flags; 0 where the grade can't say. */
  readonly gainWithout: (flagIds: ReadonlySet<string>) => number;
};

/** Remarks on the same thing, over all the exercises that show it. */
export type Theme = Priority & {
  /** Largest share of one exercise's reps that shows it, 0-1. */
  readonly share: number;
  readonly rows: readonly JudgingRow[];
};

/** Faults that are one thing under two ids, by the movement they happen in. */
const oneThing: Readonly<Record<string, string>> = { quickReturn: 'quickLowering', unevenReturn: 'unevenLowering' };

const thingOf = ({ id }: Fault): string => oneThing[id] ?? id;

/** A fault is one thing in every exercise, save where it is unsafe; a remark without a fault stays with its own exercise. */
const themeKey = ({ fault, exercise, criterion, severity }: JudgingRow): string =>
  JSON.stringify([
    severity === 'stop',
    ...(fault === null ? ['remark', exercise, criterion] : ['fault', thingOf(fault)]),
  ]);

/** Remarks without a fault in the same words of the coach are one thing, whatever criterion they stand under. */
function wordsKey(rows: readonly JudgingRow[]): string {
  const [first] = rows;
  const words = [...new Set(rows.map(({ note }) => tidy(note)))].sort();
  if (first === undefined || first.fault !== null || words.join('') === '') return JSON.stringify(rows.map(themeKey));
  return JSON.stringify([first.severity === 'stop', first.exercise, words]);
}

/** The flags that ask for a change, by what they are about. */
export function groupedByTheme(rows: readonly JudgingRow[]): JudgingRow[][] {
  const asking = rows.filter((row) => row.severity !== 'keep');
  const groups = [...Map.groupBy(asking, themeKey).values()];
  return [...Map.groupBy(groups, wordsKey).values()].map((alike) => alike.flat());
}

/**
 * Names a theme by criterion, fault, and the session's first exercise that can show the fault, flagged or not; a remark
 * without a fault by its own exercise's first entry. So no other flag changes the name.
 */
function themeName({ criterion, fault, entryId }: JudgingRow, review: Review, catalogue: Catalogue): string {
  if (fault === null) {
    const exercise = review.entries.find(({ id }) => id === entryId)?.exercise;
    const first = review.entries.find((entry) => entry.exercise === exercise);
    return `${criterion}-remark-${first?.id ?? entryId}`;
  }
  const home = review.entries.find(({ exercise }) =>
    findExercise(catalogue, exercise)?.faults.some((each) => thingOf(each) === thingOf(fault)),
  );
  return `${criterion}-${thingOf(fault)}-${home?.exercise ?? ''}`;
}

const once = (words: readonly string[]): string[] => [...new Set(words.map(tidy).filter((each) => each !== ''))];

/** The coach's own words, each thing once. */
function notesOf(rows: readonly JudgingRow[]): string[] {
  const notes = once(rows.map((row) => row.note));
  return notes.filter((note, at) => !notes.slice(0, at).some((earlier) => addsLittle(earlier, note)));
}

const heavierFirst = (a: { readonly severity: Severity }, b: { readonly severity: Severity }): number =>
  severities.indexOf(b.severity) - severities.indexOf(a.severity);

type OfEntry = { readonly entry: Entry; readonly own: readonly JudgingRow[] };
type Remark = Priority['remarks'][number] & { readonly severity: Severity };

const remarksOf = ({ entry, own }: OfEntry, catalogue: Catalogue): Remark[] =>
  own.flatMap((row) => {
    const [sighting] = sightingsOf([row], entry, catalogue);
    return sighting === undefined
      ? []
      : [{ flagId: row.flagId, sighting, note: tidy(row.note), severity: row.severity }];
  });

/** A fault in the library's first language, so that what suits a lift is the same in every language. */
function asWritten(fault: Fault, { entryId }: JudgingRow, { review, catalogue }: ThemeBasis): Fault {
  const exercise = review.entries.find(({ id }) => id === entryId)?.exercise ?? '';
  const faults = findExercise(untranslated(catalogue), exercise)?.faults ?? [];
  return faults.find(({ id }) => id === fault.id) ?? fault;
}

/** Cue, drill and proof of a theme, without those that work against what the lifts are meant to be. */
function adviceOf(rows: readonly JudgingRow[], first: JudgingRow, perEntry: readonly OfEntry[], basis: ThemeBasis) {
  const { review, catalogue, earlier } = basis;
  const [ownCue] = once(rows.flatMap((row) => (row.cue === row.fault?.cue.outcome ? [] : [row.cue])));
  const { fault } = first;
  if (fault === null) return { cue: ownCue ?? '', cueIsNew: false, otherCue: null, drill: '', proof: '' };
  const fast = perEntry.some(({ entry }) => {
    const exercise = findExercise(catalogue, entry.exercise);
    return exercise !== undefined && isMeantFast(exercise, entry, review);
  });
  const written = asWritten(fault, first, basis);
  const suits = (words: string): boolean => !fast || !slowsDown(words);
  // A cue to the body that is another in another exercise suits none but its own.
  const oneBody = new Set(rows.map((row) => row.fault?.cue.body)).size === 1;
  const worn = oneBody && cueIsWorn(fault.id, earlier);
  const outcome = suits(written.cue.outcome) ? [fault.cue.outcome] : [];
  const body = suits(written.cue.body) ? [fault.cue.body] : [];
  const cues = worn ? [...body, ...outcome] : [...outcome, ...body];
  const cue = ownCue ?? cues[0] ?? '';
  return {
    cue,
    otherCue: ownCue === undefined && oneBody ? (cues[1] ?? null) : null,
    cueIsNew: worn && ownCue === undefined && cue === fault.cue.body,
    drill: suits(written.drill) ? fault.drill : '',
    proof: fast && timesTheLowering(written.proof) ? '' : fault.proof,
  };
}

/** One theme from its rows. */
export function themeOf(rows: readonly JudgingRow[], basis: ThemeBasis): Theme[] {
  const { review, catalogue, gainWithout } = basis;
  const [first] = [...rows].sort(heavierFirst);
  if (first === undefined) return [];
  const perEntry = review.entries.flatMap((entry): OfEntry[] => {
    const own = rows.filter((row) => row.entryId === entry.id);
    return own.length === 0 ? [] : [{ entry, own }];
  });
  return [
    {
      key: themeName(first, review, catalogue),
      severity: first.severity,
      urgent: perEntry.some(({ entry, own }) => isUrgent(own, entry, review, catalogue)),
      criterion: first.criterion,
      criterionName: first.criterionName,
      fault: first.fault,
      exercises: [...new Set(rows.map((row) => row.exercise))],
      sightings: perEntry.flatMap(({ entry, own }) => sightingsOf(own, entry, catalogue)),
      remarks: perEntry
        .flatMap((each) => remarksOf(each, catalogue))
        .sort(heavierFirst)
        .map(({ severity: _, ...remark }) => remark),
      notes: notesOf(rows),
      ...adviceOf(rows, first, perEntry, basis),
      gain: first.severity === 'stop' ? 0 : gainWithout(new Set(rows.map((row) => row.flagId))),
      share: Math.max(
        ...perEntry.map(({ entry, own }) => unitsTouched(own, entry) / unitsOpened(entry, first.criterion)),
      ),
      rows,
    },
  ];
}

/** After this many letters with the same cue, the cue is changed (common practice, no source). */
const mostLetters = 3;

/** Whether a fault was flagged in each of the trainee's last three sessions: its cue has had its chance. */
function cueIsWorn(fault: string, earlier: readonly Review[]): boolean {
  const last = earlier.slice(-mostLetters);
  return (
    last.length === mostLetters &&
    last.every((review) =>
      review.entries.some(({ flags }) => flags.some((flag) => flag.fault === fault && flag.severity !== 'keep')),
    )
  );
}
