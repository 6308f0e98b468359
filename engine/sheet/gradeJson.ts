import type { CriterionScore, EntryGrade, GradeState, Overridden, Raise, SessionGrade } from '../grading/grade.ts';
import type { Language } from '../language/language.ts';
import type { ProgrammeFinding } from '../programme/finding.ts';
import { sayFinding, sayMissingGrade } from '../wording/sayGrade.ts';

/**
 * A session's grade as it is published: what `grade --json` prints, and what is kept with a letter that is sent. Scores
 * are 0-100, shares and coverage 0-1; reasons and findings are sentences in a language, names in them in the language
 * that was graded in.
 */
export function gradeJson(grade: SessionGrade, language: Language) {
  return {
    rubric: { id: grade.rubric.id, version: grade.rubric.version },
    state: stateJson(grade.state, language),
    override: overrideJson(grade.override, language),
    technique: grade.technique,
    programme: grade.programme,
    programmeCost: grade.programmeCost,
    findings: grade.findings.map((finding) => findingJson(finding, language)),
    cappedByStop: grade.cappedByStop,
    range: grade.range,
    entries: grade.entries.map((entry) => entryJson(entry, language)),
    raises: grade.raises.map(raiseJson),
  };
}

/** A finding about the plan as it is published. */
export function findingJson(finding: ProgrammeFinding, language: Language) {
  const { id, kind, severity, entryIds, restsOn, advice } = finding;
  return { id, kind, severity, entryIds, restsOn, advice, ...sayFinding(finding, language) };
}

function stateJson(state: GradeState, language: Language) {
  if (state.kind === 'none') return { kind: state.kind, reason: sayMissingGrade(state.reason, language) };
  const { kind, score, mark, gradePoints } = state;
  return { kind, mark: { score, letter: mark, gradePoints } };
}

function overrideJson(override: Overridden | null, language: Language) {
  return override && { reason: override.reason, computed: stateJson(override.computed, language) };
}

function entryJson(entry: EntryGrade, language: Language) {
  return {
    entryId: entry.entryId,
    exercise: entry.exercise,
    setsDone: entry.setsDone,
    state: stateJson(entry.state, language),
    override: overrideJson(entry.override, language),
    coverage: entry.coverage,
    weightedMean: entry.weightedMean,
    lowest: entry.lowest,
    lost: entry.lost,
    cappedByStop: entry.cappedByStop,
    range: entry.range,
    criteria: entry.criteria.map(criterionJson),
    raises: entry.raises.map(raiseJson),
  };
}

function criterionJson({ criterion, share, applicable, lookedAt, cells, score, reps }: CriterionScore) {
  return {
    ...{ criterion, share, applicable, lookedAt, cells, score },
    reps: reps.map(({ clip, rep, score: repScore, flags }) => ({
      ...{ clip, rep, score: repScore },
      flags: flags.map(({ flagId, fault, severity, cost }) => ({ flagId, fault, severity, cost })),
    })),
  };
}

/**
 * A raise; where it is not one group of equal faults, what only a group has is null. `entryIds`: all entries it lies in.
 */
function raiseJson(raise: Raise) {
  const { kind, entryIds, severity, flagIds, reps, gain } = raise;
  const { entryId, criterion, fault } =
    raise.kind === 'group' ? raise : { entryId: null, criterion: null, fault: null };
  const findingId = raise.kind === 'finding' ? raise.findingId : null;
  return { kind, entryId, entryIds, criterion, fault, severity, flagIds, findingId, reps, gain };
}
