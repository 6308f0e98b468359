import type { GradeMessageId } from '../../english/desk/grade.ts';

export const grade: Readonly<Record<GradeMessageId, string>> = {
  grade: 'Note',
  noGradeYet: 'noch keine Note',
  noGrade: 'keine Note',
  points: '{points} Punkte',
  provisional: 'vorläufig',
  lookedAt: 'Angesehen',
  cells: '{seen} von {all, plural, one {# Feld} other {# Feldern}}',
  liesBetween: 'Liegt zwischen',
  lowAndHigh: '{low} und {high}',
  session: 'Einheit',
  sessionGrade:
    '{mark} {score}{provisional, select, yes {, vorläufig} other {}}{byHand, select, yes {, von Hand gesetzt} other {}}',
  wouldRaiseExercise: 'Was die Note heben würde',
  wouldRaiseSession: 'Was die Note der Einheit heben würde',
  meanOfAll: 'Mittel aller Kriterien',
  pointsOff: 'Abzüge: {parts}',
  meanAndLowest: 'Mittel aller Kriterien und das niedrigste: {criterion}',
  cappedByStop: 'Eine Stopp-Bemerkung begrenzt sie auf {cap}.',
  stopsTogether: '{count, plural, =2 {Beide Stopps zusammen} other {Alle # Stopps zusammen}}',
  programme: 'Plan',
  programmeFinding: 'Plan: {finding}',
  reps: '{count, plural, other {# Wdh.}}',
  setByHand: 'Von Hand gesetzt.',
  byFlagsAlone: 'Nach den Bemerkungen allein: {grade}.',
};
