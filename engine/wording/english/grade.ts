import type { MissingGradeId } from '../../grading/grade.ts';

/** Why there is no grade. */
export const missingGrades = {
  noClip: 'There is no clip to judge.',
  viewShowsNothing: 'From where the clips were filmed, nothing that this exercise is judged by is visible.',
  nothingLookedAt: 'Nothing has been looked at yet.',
  tooLittleLookedAt: 'Only {seen}% of what the clips can show has been looked at; a grade needs {needed}%.',
  unknownExercise: 'The exercise is not in the library: add it there, or choose another.',
  noExercise: 'The session has no exercises yet.',
  noGradedExercise: 'No exercise of the session has a grade yet.',
} satisfies Readonly<Record<MissingGradeId, string>>;

/** What the breakdown says besides the words of the sheet. */
export const breakdown = {
  title: '{voice, select, self {Grade breakdown of my training, {date}} other {Grade breakdown: {trainee}, {date}}}',
  sessionCaption: 'Scores of the exercises and of the session, out of 100',
  part: 'Part',
  technique: 'Technique',
  gradeOf: '{exercise}: {grade}',
  gradeCell: '{mark} ({score})',
  criteriaCaption: 'Criteria of {exercise}, out of 100; looked at: {coverage}',
  notShown: 'Not visible from here: {criteria}.',
  raiseLabel: 'What would raise it:',
  raise: '{remark} +{gain}',
  raiseOf: '{remark} ({exercise}) +{gain}',
  nothingRaises: 'no note costs points.',
  raisesWaitForPain: 'nothing for now: the pain comes first.',
  stopFirst: 'first of all, fix what was unsafe: there is a stop.',
  byHandStays: 'the grade was set by hand, and no note changes it.',
  rule: 'An exercise: {mean} weighted mean of its criteria, {lowest} its lowest criterion.',
  ruleOfPoints:
    'An exercise: 100 points, less {mean, number, ::.###} of the gap from the weighted mean of its criteria to 100, {lows}; a stop holds it at {cap}.',
  ruleOfLow:
    '{share, number, ::.###} of the gap from {rank, plural, one {its lowest criterion} =2 {its second lowest} other {the #th lowest}} to {under}',
  ruleOfSession: 'The session: {technique} technique, {programme} programme.',
  ruleOfCost:
    'The session: technique, less {prefer, number} (prefer), {adjust, number} (adjust) or {correct, number} (correct) points for each point on the programme, {most, number} at most; a stop holds it at {cap}.',
  pointsOff: '−{points}',
  nothingOff: 'nothing off',
} as const;

export type BreakdownMessageId = keyof typeof breakdown;
