import type { MissingGradeId } from '../../grading/grade.ts';

/** Why there is no grade. */
export const missingGrades = {
  noClip: 'There is no clip to judge.',
  viewShowsNothing: 'The clips are filmed from a side that shows nothing this exercise is judged by.',
  nothingLookedAt: 'Nothing was looked at yet.',
  tooLittleLookedAt: 'Only {seen} % of what the clips can show was looked at; a grade needs {needed} %.',
  unknownExercise: 'The exercise is not in the library: add it there, or choose another.',
  noExercise: 'The session holds no exercise yet.',
  noGradedExercise: 'No exercise of the session has a grade yet.',
} satisfies Readonly<Record<MissingGradeId, string>>;
