import { type Block, emphasis } from '../document/document.ts';
import type { SessionGrade } from '../grading/grade.ts';
import { exerciseRule, programmeRule } from '../rubric/rules.ts';
import type { Source } from './source.ts';

function sayExerciseRule({ catalogue: { rubric }, sheet: { format }, say }: Source): string {
  const { meanShare, lowest } = exerciseRule(rubric);
  if (rubric.exerciseScore === undefined) {
    return say('rule', { mean: format.percent(meanShare), lowest: format.percent(lowest[0]?.share ?? 0) });
  }
  const lows = lowest.map((low) => say('ruleOfLow', low));
  return say('ruleOfPoints', { mean: meanShare, lows: format.list(lows), cap: format.score(rubric.stopCap.exercise) });
}

function sayProgrammeRule({ catalogue: { rubric }, sheet: { format }, say }: Source): string {
  const rule = programmeRule(rubric);
  if (rule.kind === 'share') {
    return say('ruleOfSession', {
      technique: format.percent(rule.technique),
      programme: format.percent(rule.programme),
    });
  }
  const { prefer, adjust, correct } = rule.cost;
  return say('ruleOfCost', { prefer, adjust, correct, most: rule.most, cap: format.score(rubric.stopCap.session) });
}

/** The rules that scores are put together by: an exercise's, and the session's where a plan is known. */
export function writeRule(grade: SessionGrade, source: Source): Block {
  const rules = [sayExerciseRule(source), ...(grade.programme === null ? [] : [sayProgrammeRule(source)])];
  return { kind: 'paragraph', id: 'rule', inlines: [emphasis(rules.join(' '))] };
}
