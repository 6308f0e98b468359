import type {
  CriterionScore,
  EntryGrade,
  GradeState,
  Overridden,
  ProgrammeFinding,
  Raise,
  SessionGrade,
} from '../../../engine/grading/grade.ts';

/** What `grade --json` prints, and `demo --json` as its `grade`. Scores are 0-100, shares and coverage 0-1. */
export function gradeJson(grade: SessionGrade) {
  return {
    rubric: { id: grade.rubric.id, version: grade.rubric.version },
    state: stateJson(grade.state),
    override: overrideJson(grade.override),
    technique: grade.technique,
    programme: grade.programme,
    findings: grade.findings.map(findingJson),
    cappedByStop: grade.cappedByStop,
    range: grade.range,
    entries: grade.entries.map(entryJson),
    raises: grade.raises.map(raiseJson),
  };
}

/** A finding about the plan, said in English. */
export function findingJson({ id, kind, weight, entryIds, what, why, suggestion, source }: ProgrammeFinding) {
  return { id, kind, weight, entryIds, what, why, suggestion, source };
}

function stateJson(state: GradeState) {
  if (state.kind === 'none') return { kind: state.kind, reason: state.reason };
  const { kind, score, mark, gradePoints } = state;
  return { kind, mark: { score, letter: mark, gradePoints } };
}

function overrideJson(override: Overridden | null) {
  return override && { reason: override.reason, computed: stateJson(override.computed) };
}

function entryJson(entry: EntryGrade) {
  return {
    entryId: entry.entryId,
    exercise: entry.exercise,
    setsDone: entry.setsDone,
    state: stateJson(entry.state),
    override: overrideJson(entry.override),
    coverage: entry.coverage,
    weightedMean: entry.weightedMean,
    lowest: entry.lowest,
    cappedByStop: entry.cappedByStop,
    range: entry.range,
    criteria: entry.criteria.map(criterionJson),
    raises: entry.raises.map(raiseJson),
  };
}

function criterionJson({ criterion, share, applicable, lookedAt, score, reps }: CriterionScore) {
  return {
    ...{ criterion, share, applicable, lookedAt, score },
    reps: reps.map(({ clip, rep, score: repScore, flags }) => ({
      ...{ clip, rep, score: repScore },
      flags: flags.map(({ flagId, fault, weight, cost }) => ({ flagId, fault, weight, cost })),
    })),
  };
}

function raiseJson({ entryId, criterion, fault, weight, flagIds, reps, gain }: Raise) {
  return { entryId, criterion, fault, weight, flagIds, reps, gain };
}
