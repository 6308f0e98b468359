/** The grade opened up: parts, exercises, criteria, reps, flags; and a grade set by hand. */
export const gradeTree = {
  grade: 'Grade',
  pointCount: '{points} points',
  provisional: 'provisional',
  liesBetween: 'lies between {low} and {high}',
  techniqueAlone: 'technique alone = {points}',
  techniqueAndProgramme: 'technique and programme',
  stopCap: 'A stop flag caps it at {points}.',
  programme: 'Programme {points}',
  programmeCosts: 'Programme: costs {points}',
  raises: 'What would raise it',
  rubric: '{rubric}, version {version}. Looked at: {share}.',
  set: 'set {set}',
  setAndRep: '{set}, rep {rep}',
  noFault: 'no named fault',
  kept: 'keep',
  costs: 'costs {points}',
  notLookedAt: 'not looked at',
  notVisible: 'not visible from here',
  counts: 'counts {share}',
  partly: '{lookedAt} of {applicable, plural, one {# rep} other {# reps}} looked at',

  setByHand: 'Set grade by hand',
  change: 'Change',
  changeOf: '{action}: {name}',
  useComputed: 'Use the grade from the flags',
  session: 'session',
  byHandTitle: 'Grade by hand: {name}',
  setGrade: 'Set grade',
  pointsField: 'Points, 0 to 100',
  why: 'Reason',
  byHandWords:
    'The grade from the flags stays visible beside {voice, select, self {mine} other {yours}}. A stop flag caps {voice, select, self {mine} other {yours}} too.',
  givePoints: '{voice, select, self {I need points from 0 to 100.} other {Give points from 0 to 100.}}',
  giveReason:
    '{voice, select, self {I need a reason: it is shown wherever the grade is.} other {Give a reason: it is shown wherever the grade is.}}',
} as const;

export type GradeTreeMessageId = keyof typeof gradeTree;
