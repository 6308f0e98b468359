/** A grade: what it is made of, and what would raise it. */
export const grade = {
  grade: 'Grade',
  noGradeYet: 'no grade yet',
  noGrade: 'no grade',
  points: '{points} points',
  provisional: 'provisional',
  lookedAt: 'Looked at',
  cells: '{seen} of {all, plural, one {# cell} other {# cells}}',
  liesBetween: 'Lies between',
  lowAndHigh: '{low} and {high}',
  session: 'Session',
  sessionGrade:
    '{mark} {score}{provisional, select, yes {, provisional} other {}}{byHand, select, yes {, set by hand} other {}}',
  wouldRaiseExercise: 'What would raise the grade',
  wouldRaiseSession: 'What would raise the session’s grade',
  meanOfAll: 'mean of all criteria',
  pointsOff: 'points off: {parts}',
  meanAndLowest: 'mean of all criteria, and the lowest: {criterion}',
  cappedByStop: 'A stop flag caps it at {cap}.',
  stopsTogether: '{count, plural, =2 {Both stops together} other {All # stops together}}',
  programme: 'Programme',
  programmeFinding: 'Programme: {finding}',
  reps: '{count, plural, one {# rep} other {# reps}}',
  setByHand: 'Set by hand.',
  byFlagsAlone: 'From the flags alone: {grade}.',
} as const;

export type GradeMessageId = keyof typeof grade;
