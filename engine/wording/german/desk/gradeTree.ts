import type { GradeTreeMessageId } from '../../english/desk/gradeTree.ts';

export const gradeTree: Readonly<Record<GradeTreeMessageId, string>> = {
  grade: 'Note',
  pointCount: '{points} Punkte',
  provisional: 'vorläufig',
  liesBetween: 'liegt zwischen {low} und {high}',
  techniqueAlone: 'Technik allein = {points}',
  techniqueAndProgramme: 'Technik und Plan',
  stopCap: 'Eine Stopp-Bemerkung begrenzt sie auf {points}.',
  programme: 'Plan {points}',
  programmeCosts: 'Plan: kostet {points}',
  raises: 'Was die Note heben würde',
  rubric: '{rubric}, Version {version}. Angesehen: {share}.',
  set: 'Satz {set}',
  setAndRep: '{set}, Wiederholung {rep}',
  noFault: 'ohne benannten Fehler',
  kept: 'beibehalten',
  costs: 'kostet {points}',
  notLookedAt: 'nicht angesehen',
  notVisible: 'von hier nicht zu sehen',
  counts: 'zählt {share}',
  partly: '{lookedAt} von {applicable, plural, one {# Wiederholung} other {# Wiederholungen}} angesehen',

  setByHand: 'Note von Hand setzen',
  change: 'Ändern',
  changeOf: '{action}: {name}',
  useComputed: 'Note nach den Bemerkungen nehmen',
  session: 'Einheit',
  byHandTitle: 'Note von Hand: {name}',
  setGrade: 'Note setzen',
  pointsField: 'Punkte, 0 bis 100',
  why: 'Begründung',
  byHandWords:
    'Die Note nach den Bemerkungen bleibt neben {voice, select, self {meiner} other {deiner}} sichtbar. Eine Stopp-Bemerkung begrenzt auch {voice, select, self {meine} other {deine}}.',
  givePoints: '{voice, select, self {Es fehlen Punkte von 0 bis 100.} other {Gib Punkte von 0 bis 100 an.}}',
  giveReason:
    '{voice, select, self {Es fehlt eine Begründung: Sie steht überall, wo die Note steht.} other {Gib eine Begründung an: Sie steht überall, wo die Note steht.}}',
};
