import type { SessionGrade } from '../grading/grade.ts';
import type { Review } from '../review/review.ts';
import { severities } from '../rubric/rubric.ts';
import type { JudgingRow } from '../sheet/flagRows.ts';
import type { LetterPlan, Priority } from './letterPlan.ts';
import { groupedByTheme, type Theme, type ThemeBasis, themeOf } from './themes.ts';

const severity = (theme: Theme): number => severities.indexOf(theme.severity);

/** A lower back that gives its shape up under load, which comes before a trunk that moves as a whole. */
const isOfLowBack = ({ urgent, fault }: Theme): boolean => urgent && (fault?.id.startsWith('lowBack') ?? false);

/** Unsafe first, then urgent, the lower back before others, then by what the session gains without it; equal gains by severity and by how often it was seen. */
const byImportance = (a: Theme, b: Theme): number =>
  Number(b.severity === 'stop') - Number(a.severity === 'stop') ||
  Number(b.urgent) - Number(a.urgent) ||
  Number(isOfLowBack(b)) - Number(isOfLowBack(a)) ||
  b.gain - a.gain ||
  severity(b) - severity(a) ||
  b.share - a.share;

/** One for a new trainee, or beside something unsafe that waits for pain; three from grade points 3 (a B) up; two otherwise. */
function mostPriorities(review: Review, grade: SessionGrade, stops: number): number {
  if (stops > 0 || review.trainee.experience === 'new') return 1;
  return grade.state.kind !== 'none' && grade.state.gradePoints >= 3 ? 3 : 2;
}

/** Unsafe things are all put right before anything else, as many as a letter can hold. */
const mostUnsafe = 3;

/** Below this share of an exercise's reps a remark is left to the sheet, unless it is a stop. */
const smallestShare = 0.2;

/** The criterion of stance, bench and equipment: what stands on it is put right after it. */
const setUpCriterion = 'setUp';

/** Whether other things asked for happen in the same exercise as a faulty set-up, which then comes before them. */
function isGroundOf(one: Theme, all: readonly Theme[]): boolean {
  return (
    one.criterion === setUpCriterion &&
    one.severity !== 'prefer' &&
    all.some((other) => other !== one && other.exercises.some((exercise) => one.exercises.includes(exercise)))
  );
}

/** What is urgent first, then the set-up that the rest depends on, then the others as they were. */
function inOrderToTake(chosen: readonly Theme[]): Theme[] {
  const rank = (theme: Theme): number => (theme.urgent ? 0 : isGroundOf(theme, chosen) ? 1 : 2);
  return [...chosen].sort((a, b) => rank(a) - rank(b));
}

/**
 * One choice for the trainee, where nothing is unsafe and the order does not matter: which of several things to begin with, else
 * which of two cues. Choosing is offered because it is pleasant and harmless, not for an effect (McKay et al. 2022,
 * Meta-Psychology: g 0.11).
 */
function choiceOf(chosen: readonly Theme[], stops: number): LetterPlan['choice'] {
  const [first, second] = chosen;
  if (first === undefined || stops > 0) return null;
  if (second !== undefined) return first.urgent || isGroundOf(first, chosen) ? { kind: 'inOrder' } : { kind: 'free' };
  return first.urgent || first.otherCue === null ? null : { kind: 'cue', other: first.otherCue };
}

const plain = ({ share: _share, rows: _rows, ...priority }: Theme): Priority => priority;

export type PlannedPriorities = Pick<LetterPlan, 'priorities' | 'stops' | 'choice' | 'remarksLeft'> & {
  /** The theme whose absence would gain most; null where none gains. */
  readonly largest: Priority | null;
};

/**
 * What the letter asks to change, most important first; every unsafe thing; and how many remarks are left to the
 * sheet. `rows` are the review's flags; nothing is asked of the lifts in `held`, entries that pain holds back.
 */
export function planPriorities(
  basis: ThemeBasis,
  rows: readonly JudgingRow[],
  held: ReadonlySet<string>,
): PlannedPriorities {
  const { review, grade } = basis;
  const all = groupedByTheme(rows);
  const stops = all.filter(([first]) => first?.severity === 'stop').flatMap((own) => themeOf(own, basis));
  const themes = groupedByTheme(rows.filter(({ entryId }) => !held.has(entryId)))
    .flatMap((own) => themeOf(own, basis))
    .sort(byImportance);
  const worthSaying = themes.filter(
    (theme) => theme.severity === 'stop' || theme.urgent || theme.share >= smallestShare,
  );
  const unsafe = worthSaying.filter(({ severity }) => severity === 'stop').slice(0, mostUnsafe);
  const chosen =
    unsafe.length > 0 ? unsafe : inOrderToTake(worthSaying.slice(0, mostPriorities(review, grade, stops.length)));
  const said = new Set(chosen.concat(stops).flatMap((theme) => theme.rows.map(({ flagId }) => flagId)));
  const [largest] = themes.filter(({ gain }) => gain > 0).sort((a, b) => b.gain - a.gain);
  return {
    priorities: chosen.map(plain),
    stops: stops.map(plain),
    choice: choiceOf(chosen, stops.length),
    remarksLeft: all.flat().filter(({ flagId }) => !said.has(flagId)).length,
    largest: largest === undefined ? null : plain(largest),
  };
}
