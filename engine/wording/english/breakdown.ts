/** What the breakdown says besides the words of the sheet. */
export const breakdown = {
  title: 'Grade breakdown: {trainee}, {date}',
  sessionCaption: 'Scores of the exercises and of the session, out of 100',
  part: 'Part',
  technique: 'Technique',
  gradeOf: '{exercise}: {grade}',
  gradeCell: '{mark} ({score})',
  criteriaCaption: 'Criteria of {exercise}, out of 100; looked at: {coverage}',
  notShown: 'Not shown by this view: {criteria}.',
  raiseLabel: 'What would raise it:',
  raise: '{remark} +{gain}',
  nothingRaises: 'no remark costs points.',
  rule: 'An exercise: {mean} weighted mean of its criteria, {lowest} its lowest criterion.',
  ruleOfSession: 'The session: {technique} technique, {programme} programme.',
} as const;

export type BreakdownMessageId = keyof typeof breakdown;
