import type { MissingGradeId } from '../../grading/grade.ts';
import type { FindingMessageId } from '../../programme/finding.ts';

/** Why there is no grade. */
export const missingGrades = {
  noClip: 'There is no clip to judge.',
  viewShowsNothing: 'The clips are filmed from a side that shows nothing this exercise is judged by.',
  nothingLookedAt: 'Nothing has been looked at yet.',
  tooLittleLookedAt: 'Only {seen} % of what the clips can show has been looked at; a grade needs {needed} %.',
  unknownExercise: 'The exercise is not in the library: add it there, or choose another.',
  noExercise: 'The session has no exercises yet.',
  noGradedExercise: 'No exercise of the session has a grade yet.',
} satisfies Readonly<Record<MissingGradeId, string>>;

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
  raiseOf: '{remark} ({exercise}) +{gain}',
  nothingRaises: 'no remark costs points.',
  stopFirst: 'first of all, put right what was unsafe: a stop stands.',
  byHandStays: 'the grade was set by hand, and no remark changes it.',
  rule: 'An exercise: {mean} weighted mean of its criteria, {lowest} its lowest criterion.',
  ruleOfPoints:
    'An exercise: 100 points, less {mean, number, ::.###} of what the weighted mean of its criteria lacks to 100, {lows}; a stop holds it at {cap}.',
  ruleOfLow:
    '{share, number, ::.###} of what {rank, plural, one {its lowest criterion} =2 {its second lowest} other {the #th from below}} lacks to {under}',
  ruleOfSession: 'The session: {technique} technique, {programme} programme.',
  ruleOfCost:
    'The session: technique, less {prefer} points for each finding of the programme to prefer, {adjust} to adjust and {correct} to correct, {most} at most; a stop holds it at {cap}.',
  pointsOff: '−{points}',
} as const;

export type BreakdownMessageId = keyof typeof breakdown;

/** The texts of one finding. */
export type FindingWording = {
  readonly what: string;
  readonly why: string;
  readonly suggestion: string;
  readonly source: string;
};

const longLengths = 'Work at long muscle lengths has so far grown muscle at least as well, and in some trials better.';

/** What the plan of a session could do better. */
export const programme = {
  repsForGrowth: {
    what: '{exercise} is planned at {reps, plural, one {# rep} other {# reps}} a set, and the goal is growth.',
    why: 'Muscle grows about alike over a wide span of reps when sets come near failure; outside it, sets cost more than they give.',
    suggestion: 'Choose a load that ends a set between {from} and {to} reps.',
    source: 'span: common practice; loads compared: Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  repsForStrength: {
    what: '{exercise} is planned at {reps, plural, one {# rep} other {# reps}} a set, and the goal is strength.',
    why: 'Strength in a lift follows the load most closely, and heavy loads leave few reps.',
    suggestion: 'Choose a load that ends a set between {from} and {to} reps.',
    source: 'Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  },
  effort: {
    what: '{exercise} is planned to end with {reps, number, ::.##} reps in reserve.',
    why: 'For growth, sets that end nearer to failure tend to give a little more.',
    suggestion: 'Add load or reps until about {enough} are left, as long as technique holds.',
    source: 'Refalo et al. 2023, Sports Med 53:649',
  },
  order: {
    what: '{earlier} comes before {later}, and both train the {muscles}.',
    why: 'What is trained first gains most in strength; the bigger lift then starts with tired muscles.',
    suggestion: 'Do {later} first, unless {earlier} is what matters most.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149; Simão et al. 2010, J Sports Sci Med 9:1',
  },
  loadOrder: {
    what: '{earlier} for {more, number} reps comes before the heavier {later} for {fewer, number}, and both train the {muscles}.',
    why: 'Heavy work asks for fresh muscles and a fresh head; what comes first gains most in strength.',
    suggestion: 'Do {later} first.',
    source: 'Nunes et al. 2021, Eur J Sport Sci 21:149',
  },
  setOrder: {
    what: 'The load of {exercise} climbs over its filmed sets, so the heaviest one is done last and tired.',
    why: 'For strength the heaviest set teaches most while technique is fresh.',
    suggestion: 'Warm up to the heaviest set, do it first, then take load off for the others.',
    source: 'common practice',
  },
  doubledLoad: {
    what: '{one} and {other} are both heavy work for the {muscles}.',
    why: 'Further sets give less and less, and the second exercise is done tired: its technique suffers first.',
    suggestion:
      'Halve both: {ones, plural, one {# set} other {# sets}} of {one}, {others, plural, one {# set} other {# sets}} of {other}; or move one to another day.',
    source: 'halving: common practice; falling returns: Pelland et al. 2025, Sports Med',
  },
  shortEndLoad: {
    what: '{exercise} is hardest where the muscles are shortest, and light where they are long.',
    why: longLengths,
    suggestion:
      'Put {better} beside it or in its place.{count, plural, =0 {} other { After that, in order: {others}.}}',
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1); Maeo et al. 2021, Med Sci Sports Exerc 53:825',
  },
  shortEndPause: {
    what: '{exercise} is planned with a pause at the short end ({shortEnd}) and none at the long end.',
    why: 'The short end of this exercise is where the muscles rest; a pause there makes the set easier, not better.',
    suggestion: 'Move the pause to the long end ({longEnd}), or drop it.',
    source: 'common practice',
  },
  shortHolds: {
    what: 'Every hold for the {muscle} is at the short end: {exercises}.',
    why: 'Strength from holds stays near the angle held, and holds at long muscle lengths carry over further.',
    suggestion: 'Move one of the holds to the long end.',
    source: 'Oranchuk et al. 2019, Scand J Med Sci Sports 29:484',
  },
  curtailedRange: {
    what: '{exercise}: {by} ends the range before the muscles are at their longest.',
    why: longLengths,
    suggestion: 'Put {better} beside it or in its place, unless the shorter range is there for a reason.',
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  profileBalance: {
    what: 'All {count, number} exercises for the {muscle} are hardest where it is short.',
    why: 'A muscle that is never loaded hard at its long end misses the part of the range that has grown muscle at least as well in trials.',
    suggestion: 'Swap one of them for an exercise that is hard at the long end.',
    source: 'Wolf et al. 2023, Int J Strength Cond 3(1)',
  },
  weeklyVolume: {
    what: 'More than 20 sets this week went to the {muscles}.',
    why: 'Beyond about 20 sets a week most muscles gained no more in trials, and every set still has to be recovered from.',
    suggestion: 'Check how recovery goes, and drop the sets that feel like going through the motions.',
    source: 'Pelland et al. 2025, Sports Med; meta-analysis of 2022 on trained men (12 to 20 sets)',
  },
  spacing: {
    what: 'Hard sets for the {muscles} came less than two days after the last ones.',
    why: 'After sets near failure most people need one to two days before the same muscles perform as well again.',
    suggestion: 'Leave a day between, or keep more in reserve on one of the two days.',
    source: 'Morán-Navarro et al. 2017, Eur J Appl Physiol 117:2387',
  },
} satisfies Readonly<Record<FindingMessageId, FindingWording>>;
