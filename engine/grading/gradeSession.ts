import type { Catalogue } from '../exercises/catalogue.ts';
import type { ProgrammeFinding } from '../programme/finding.ts';
import { programmeFindings } from '../programme/findings.ts';
import { setsDone } from '../review/parts.ts';
import type { Entry, Review } from '../review/review.ts';
import { markFor, type Rubric, withoutNoise } from '../rubric/rubric.ts';
import { programmeRule } from '../rubric/rules.ts';
import { cap, type Stop, weightedMean } from './arithmetic.ts';
import { announce, faultGroups, largestFirst } from './faultGroups.ts';
import type { EntryGrade, GradeState, Raise, SessionGrade } from './grade.ts';
import { gradeJudged, judge, missing, rangeOf, ungraded, withOverride } from './gradeEntry.ts';
import { type JudgedEntry, stopsIn, stopWithout } from './judge.ts';

type Part = {
  readonly entry: Entry;
  readonly judged: JudgedEntry | null;
  readonly grade: EntryGrade;
  readonly stops: number;
};

/** Points that findings take off technique where the rubric counts so, at most as many as it says; else null. */
function programmeCost(findings: readonly ProgrammeFinding[], rubric: Rubric): number | null {
  const rule = programmeRule(rubric);
  if (rule.kind === 'share') return null;
  return Math.min(rule.most, withoutNoise(findings.reduce((sum, { weight }) => sum + rule.cost[weight], 0)));
}

/** The programme by itself: 100 less its cost, or 100 × the product of (1 − cost) multiplied in a fixed order. */
function programmeScore(findings: readonly ProgrammeFinding[], rubric: Rubric): number {
  const points = programmeCost(findings, rubric);
  if (points !== null) return 100 - points;
  const costs = findings.map((finding) => rubric.cost[finding.weight]).sort((a, b) => b - a);
  return withoutNoise(100 * costs.reduce((left, cost) => left * (1 - cost), 1));
}

/**
 * Session score from technique (0-100) and, where a plan is known, the programme: a mean by the rubric's shares, or
 * technique less what the programme costs; capped where a stop flag stands.
 */
function combine(technique: number, programme: number | null, rubric: Rubric, stop: Stop): number {
  const rule = programmeRule(rubric);
  const free = (): number => {
    if (programme === null) return technique;
    if (rule.kind === 'cost') return technique - (100 - programme);
    return rule.technique * technique + rule.programme * programme;
  };
  return cap(Math.min(100, Math.max(0, withoutNoise(free()))), rubric.stopCap.session, stop);
}

const stopsAnywhere = (parts: readonly Part[]): number => parts.reduce((sum, { stops }) => sum + stops, 0);

const bySets = (scores: readonly { readonly entry: Entry; readonly score: number }[]): number =>
  weightedMean(scores.map(({ entry, score }) => ({ weight: setsDone(entry), score })));

type Which = (grade: EntryGrade) => GradeState;
const counting: Which = (grade) => grade.state;
/** What the arithmetic says, grades set by hand left aside. */
const computed: Which = (grade) => grade.override?.computed ?? grade.state;

const gradedParts = (parts: readonly Part[], which: Which) =>
  parts.flatMap((part) => {
    const state = which(part.grade);
    return state.kind === 'none' ? [] : [{ ...part, score: state.score }];
  });

/** Mean of the graded entries weighted by sets done; null when none is graded. */
function techniqueOf(parts: readonly Part[], which: Which): number | null {
  const graded = gradedParts(parts, which);
  return graded.length === 0 ? null : withoutNoise(bySets(graded));
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
function sessionRange(parts: readonly Part[], programme: number | null, rubric: Rubric) {
  const stop = stopWithout(stopsAnywhere(parts), null);
  const ends = parts.map(({ entry, judged, grade }) => {
    if (grade.override !== null && grade.state.kind !== 'none') {
      return { entry, ends: { low: grade.state.score, high: grade.state.score } };
    }
    return { entry, ends: judged === null ? rubric.unseen : rangeOf(judged) };
  });
  const at = (end: 'low' | 'high') =>
    combine(bySets(ends.map((one) => ({ entry: one.entry, score: one.ends[end] }))), programme, rubric, stop);
  return { low: at('low'), high: at('high') };
}

/** The groups of an entry with what the entry itself would gain; an entry without a grade gains nothing. */
function raisesOfEntry({ entry, judged, grade }: Part): readonly Raise[] {
  if (grade.raises.length > 0 || judged === null) return grade.raises;
  return faultGroups(judged).map((group) => announce(group, entry.id, 0));
}

/** What the session would gain without each group of each entry; the other entries are summed up once. */
function raisesOf(parts: readonly Part[], score: number, combined: (technique: number, stop: Stop) => number): Raise[] {
  const graded = gradedParts(parts, computed);
  const sets = graded.reduce((sum, { entry }) => sum + setsDone(entry), 0);
  const points = graded.reduce((sum, part) => sum + setsDone(part.entry) * part.score, 0);
  const stops = stopsAnywhere(parts);
  return parts.flatMap((part) =>
    raisesOfEntry(part).map((raise): Raise => {
      const technique = (points + setsDone(part.entry) * raise.gain) / sets;
      const left = raise.weight === 'stop' ? stops - raise.flagIds.length : stops;
      return { ...raise, gain: withoutNoise(combined(technique, left > 0 ? 'stop' : 'no stop') - score) };
    }),
  );
}

/**
 * The grade of a session. Technique = mean of the graded entries weighted by sets done; with a plan known, the
 * session is 0.8 technique + 0.2 programme (the rubric's shares), else technique alone; a stop flag anywhere
 * caps it. A grade set by hand counts in place of an entry's or the session's own. Provisional when any entry is
 * provisional or has no grade; none when no entry has one. Its raises are gains of the session's own score.
 */
export function gradeSession(review: Review, catalogue: Catalogue): SessionGrade {
  const { rubric } = catalogue;
  const parts = review.entries.map((entry): Part => {
    const judged = judge(entry, catalogue);
    const grade = judged === null ? ungraded(entry, catalogue) : gradeJudged(judged);
    return { entry, judged, grade, stops: stopsIn(entry) };
  });
  const planned = review.entries.some((entry) => entry.plan !== undefined);
  const findings = planned ? programmeFindings(review, catalogue) : [];
  const programme = planned ? programmeScore(findings, rubric) : null;
  const stop = stopWithout(stopsAnywhere(parts), null);
  const together = (technique: number | null) =>
    technique === null ? null : combine(technique, programme, rubric, stop);
  const technique = techniqueOf(parts, counting);
  const score = together(technique);
  const byArithmetic = together(techniqueOf(parts, computed));
  const raises =
    byArithmetic === null
      ? []
      : raisesOf(parts, byArithmetic, (fixed, left) => combine(fixed, programme, rubric, left));
  return {
    rubric: { id: rubric.id, version: rubric.version },
    ...withOverride(stateOf(parts, score, rubric), review.session.override, {
      rubric,
      most: rubric.stopCap.session,
      stop,
    }),
    technique,
    programme,
    programmeCost: planned ? programmeCost(findings, rubric) : null,
    findings,
    cappedByStop: technique !== null && score !== null && score < combine(technique, programme, rubric, 'no stop'),
    range: score === null ? null : sessionRange(parts, programme, rubric),
    entries: parts.map(({ grade }) => grade),
    raises: largestFirst(raises),
  };
}
