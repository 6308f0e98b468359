import type { Catalogue } from '../exercises/catalogue.ts';
import { setsDone } from '../review/parts.ts';
import type { Entry, Override } from '../review/review.ts';
import { markFor, type Rubric, withoutNoise } from '../rubric/rubric.ts';
import { shownPercent } from '../rubric/shownNumbers.ts';
import { cap, type Stop } from './arithmetic.ts';
import { faultGroups } from './faultGroups.ts';
import type { EntryGrade, GradeState, MissingGrade, MissingGradeId, Overridden, Raise } from './grade.ts';
import { type JudgedEntry, judgeEntry, type LeftAside, scoreEntry, stopsIn, stopWithout } from './judge.ts';
import { announce, largestFirst } from './raises.ts';

/** An entry's flags on its reps; null when the library doesn't hold its exercise. */
export function judge(entry: Entry, catalogue: Catalogue): JudgedEntry | null {
  const exercise = catalogue.exercises.find((one) => one.id === entry.exercise);
  return exercise === undefined ? null : judgeEntry(entry, exercise, catalogue);
}

/** The state of a missing grade, with its reason. */
export const missing = (id: MissingGradeId, values: MissingGrade['values'] = {}): GradeState => ({
  kind: 'none',
  reason: { id, values },
});

function stateOf({ entry, rubric, coverage, criteria }: JudgedEntry, score: number | null): GradeState {
  if (entry.clips.length === 0) return missing('noClip');
  if (!criteria.some(({ scored }) => scored.applicable)) return missing('viewShowsNothing');
  if (score === null || coverage === 0) return missing('nothingLookedAt');
  const { noneUnder } = rubric.coverage;
  if (coverage < noneUnder) {
    return missing('tooLittleLookedAt', { seen: shownPercent(coverage), needed: shownPercent(noneUnder) });
  }
  const kind = coverage < rubric.coverage.provisionalUnder ? 'provisional' : 'graded';
  return { kind, ...markFor(score, rubric) };
}

/**
 * The score that counts for an entry without some groups of its flags, which still count as looked at: the coach's where
 * they set one by hand, held by the cap while a stop flag stands, else the arithmetic's. Null without a grade.
 */
export function scoreWithout(judged: JudgedEntry, grade: EntryGrade, gone: readonly LeftAside[]): number | null {
  if (grade.state.kind === 'none') return null;
  const { entry, rubric, stops } = judged;
  if (entry.override !== undefined) {
    return cap(entry.override.score, rubric.stopCap.exercise, stopWithout(stops, gone));
  }
  return gone.length === 0 ? grade.state.score : (scoreEntry(judged, 'left out', gone)?.score ?? null);
}

function raisesOf(judged: JudgedEntry, grade: EntryGrade): Raise[] {
  const score = scoreWithout(judged, grade, []);
  if (score === null) return [];
  const groups = faultGroups(judged).map((group) => ({ entryId: judged.entry.id, group }));
  const raises = announce(groups, (gone) => {
    const without = scoreWithout(
      judged,
      grade,
      gone.map(({ group }) => group),
    );
    return withoutNoise((without ?? score) - score);
  });
  return largestFirst(raises);
}

/**
 * The span an entry's score can end in: unseen reps all taken at the rubric's low and high assumption, the
 * stop cap applied. low ≤ high always; an entry's own score is never above high. It is below low only when what
 * was seen is on average worse than the low assumption: then looking at the rest can only help.
 */
export function rangeOf(judged: JudgedEntry): { low: number; high: number } {
  const { low, high } = judged.rubric.unseen;
  return { low: scoreEntry(judged, low)?.score ?? low, high: scoreEntry(judged, high)?.score ?? high };
}

const standingOf = (entry: Entry, computed: GradeState, rubric: Rubric) =>
  withOverride(computed, entry.override, {
    rubric,
    most: rubric.stopCap.exercise,
    stop: stopWithout(stopsIn(entry), []),
  });

/** The grade of an entry whose exercise is known, from its flags laid on its reps. */
export function gradeJudged(judged: JudgedEntry): EntryGrade {
  const { entry, rubric, coverage } = judged;
  const result = entry.clips.length === 0 ? null : scoreEntry(judged, 'left out');
  const computed = stateOf(judged, result?.score ?? null);
  const graded = computed.kind !== 'none' && result !== null;
  const grade: EntryGrade = {
    entryId: entry.id,
    exercise: entry.exercise,
    setsDone: setsDone(entry),
    ...standingOf(entry, computed, rubric),
    coverage,
    weightedMean: result?.weightedMean ?? null,
    lowest: result?.lowest ?? null,
    lost: result?.lost ?? null,
    cappedByStop: result?.capped ?? false,
    range: graded ? rangeOf(judged) : null,
    criteria: judged.criteria.map((one) => one.scored),
    raises: [],
  };
  return { ...grade, raises: raisesOf(judged, grade) };
}

/** The grade of an entry whose exercise the library doesn't have. */
export function ungraded(entry: Entry, catalogue: Catalogue): EntryGrade {
  const { rubric } = catalogue;
  return {
    entryId: entry.id,
    exercise: entry.exercise,
    setsDone: setsDone(entry),
    ...standingOf(entry, missing('unknownExercise'), rubric),
    coverage: 0,
    weightedMean: null,
    lowest: null,
    lost: null,
    cappedByStop: false,
    range: null,
    criteria: [],
    raises: [],
  };
}

/** The grade that counts, and the computed one where the coach set another by hand. */
type Standing = { readonly state: GradeState; readonly override: Overridden | null };

/**
 * Replaces the computed grade by the coach's. It counts in full, whatever the coverage. The cap of a stop flag still
 * holds: to lift it, the flag has to go.
 */
export function withOverride(
  computed: GradeState,
  override: Override | undefined,
  { rubric, most, stop }: { readonly rubric: Rubric; readonly most: number; readonly stop: Stop },
): Standing {
  if (override === undefined) return { state: computed, override: null };
  const marked = markFor(cap(override.score, most, stop), rubric);
  return { state: { kind: 'graded', ...marked }, override: { reason: override.reason, computed } };
}
