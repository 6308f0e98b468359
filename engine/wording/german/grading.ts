import type { MissingGradeId } from '../../grading/grade.ts';

/** Why there is no grade. */
export const missingGrades = {
  noClip: 'Es gibt keinen Clip, der zu beurteilen wäre.',
  viewShowsNothing:
    'Die Clips sind von einer Seite gefilmt, die nichts von dem zeigt, wonach diese Übung beurteilt wird.',
  nothingLookedAt: 'Es ist noch nichts angesehen.',
  tooLittleLookedAt:
    'Von dem, was die Clips zeigen können, sind erst {seen} % angesehen; eine Note braucht {needed} %.',
  unknownExercise: 'Die Übung steht nicht in der Bibliothek: Trag sie dort ein oder wähl eine andere.',
  noExercise: 'Die Einheit enthält noch keine Übung.',
  noGradedExercise: 'Noch hat keine Übung der Einheit eine Note.',
} satisfies Readonly<Record<MissingGradeId, string>>;
