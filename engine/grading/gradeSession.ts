import type { Catalogue } from '../exercises/catalogue.ts';
import { costing, type ProgrammeFinding } from '../programme/finding.ts';
import { programmeFindings } from '../programme/findings.ts';
import { firstRuleSeverities } from '../programme/firstRules.ts';
import type { TrainedSession } from '../programme/week.ts';
import { setsDone } from '../review/parts.ts';
import type { Review } from '../review/review.ts';
import { markFor, type Rubric, withoutNoise } from '../rubric/rubric.ts';
import { programmeRule } from '../rubric/rules.ts';
import { cap, type Stop, weightedMean } from './arithmetic.ts';
import type { GradeState, SessionGrade } from './grade.ts';
import { gradeJudged, judge, missing, rangeOf, ungraded, withOverride } from './gradeEntry.ts';
import { stopsIn, stopWithout } from './judge.ts';
import { type ProgrammePart, programmePart } from './programmePart.ts';
import { type Part, raisesOfSession } from './sessionRaises.ts';

/**
 * Session score from technique (0-100) and, where a plan is known, the programme: a mean by the rubric's shares, or
 * technique less what the programme costs; capped where a stop flag stands.
 */
function combine(technique: number, programme: ProgrammePart | null, rubric: Rubric, stop: Stop): number {
  const rule = programmeRule(rubric);
  const free = (): number => {
    if (programme === null) return technique;
    if (rule.kind === 'cost') return technique - (programme.cost ?? 0);
    return rule.technique * technique + rule.programme * programme.score;
  };
  return cap(Math.min(100, Math.max(0, withoutNoise(free()))), rubric.stopCap.session, stop);
}

const stopsAnywhere = (parts: readonly Part[]): number => parts.reduce((sum, { stops }) => sum + stops, 0);

/** Mean of the graded entries weighted by sets done, on film or not; null when none is graded. */
function techniqueOf(parts: readonly Part[]): number | null {
  const graded = parts.flatMap(({ entry, grade: { state } }) =>
    state.kind === 'none' ? [] : [{ weight: setsDone(entry), score: state.score }],
  );
  return graded.length === 0 ? null : withoutNoise(weightedMean(graded));
}

function stateOf(parts: readonly Part[], score: number | null, rubric: Rubric): GradeState {
  if (score === null) {
    return missing(parts.length === 0 ? 'noExercise' : 'noGradedExercise');
  }
  const whole = parts.every(({ grade }) => grade.state.kind === 'graded');
  return { kind: whole ? 'graded' : 'provisional', ...markFor(score, rubric) };
}

/**
 * The session's range: each entry at the ends of its own, or at its grade set by hand; one that can't be judged counts
 * as unseen as a whole.
 */
function rangeOfSession(parts: readonly Part[], programme: ProgrammePart | null, rubric: Rubric) {
  const stop = stopWithout(stopsAnywhere(parts), []);
  const ends = parts.map(({ entry, judged, grade }) => {
    const weight = setsDone(entry);
    if (grade.override !== null && grade.state.kind !== 'none') {
      return { weight, low: grade.state.score, high: grade.state.score };
    }
    return { weight, ...(judged === null ? rubric.unseen : rangeOf(judged)) };
  });
  const at = (end: 'low' | 'high') =>
    combine(weightedMean(ends.map((one) => ({ weight: one.weight, score: one[end] }))), programme, rubric, stop);
  return { low: at('low'), high: at('high') };
}

/**
 * The grade of a session. Technique = mean of the graded entries weighted by sets done; with a plan known, the programme
 * is averaged in or takes points off, as the rubric says; a stop flag anywhere caps it. A grade set by hand counts in
 * place of an entry's or the session's own. Provisional when any entry is provisional or has no grade; none when no
 * entry has one. Its raises are gains of the session's own score.
 */
export function gradeSession(
  review: Review,
  catalogue: Catalogue,
  earlier: readonly TrainedSession[] = [],
): SessionGrade {
  const { rubric } = catalogue;
  const parts = review.entries.map((entry): Part => {
    const judged = judge(entry, catalogue);
    const grade = judged === null ? ungraded(entry, catalogue) : gradeJudged(judged);
    return { entry, judged, grade, stops: stopsIn(entry) };
  });
  const planned = review.entries.some((entry) => entry.plan !== undefined);
  const findings = programmeFindings(review, catalogue, earlier);
  const costs = costing(findings);
  const byShare = programmeRule(rubric).kind === 'share' ? firstRuleSeverities(review, catalogue) : null;
  const partOf = (found: readonly ProgrammeFinding[]) =>
    planned ? programmePart(byShare ?? found.map(({ severity }) => severity), rubric) : null;
  const programme = partOf(costs);
  const stop = stopWithout(stopsAnywhere(parts), []);
  const technique = techniqueOf(parts);
  const score = technique === null ? null : combine(technique, programme, rubric, stop);
  const { override } = review.session;
  const most = rubric.stopCap.session;
  /** The score that counts once technique, findings and stops are these. */
  const standing = (changed: number, left: readonly ProgrammeFinding[], still: Stop): number =>
    override === undefined ? combine(changed, partOf(left), rubric, still) : cap(override.score, most, still);
  return {
    rubric: { id: rubric.id, version: rubric.version },
    ...withOverride(stateOf(parts, score, rubric), override, { rubric, most, stop }),
    technique,
    programme: programme?.score ?? null,
    programmeCost: programme?.cost ?? null,
    findings,
    cappedByStop: technique !== null && score !== null && score < combine(technique, programme, rubric, 'no stop'),
    range: score === null ? null : rangeOfSession(parts, programme, rubric),
    entries: parts.map(({ grade }) => grade),
    raises: technique === null ? [] : raisesOfSession({ parts, technique, findings: costs, rubric, standing }),
  };
}
