import type { MissingGradeId } from '../../grading/grade.ts';
import type { BreakdownMessageId } from '../english/grade.ts';

/** Why there is no grade. */
export const missingGrades = {
  noClip: 'Es gibt keinen Clip, der zu beurteilen wäre.',
  viewShowsNothing: 'Die Clips sind so gefilmt, dass nichts von dem zu sehen ist, wonach diese Übung beurteilt wird.',
  nothingLookedAt: 'Es ist noch nichts angesehen.',
  tooLittleLookedAt:
    'Von dem, was die Clips zeigen können, sind erst {seen} % angesehen; eine Note braucht {needed} %.',
  unknownExercise: 'Die Übung steht nicht in der Bibliothek: Trag sie dort ein oder wähl eine andere.',
  noExercise: 'Die Einheit enthält noch keine Übung.',
  noGradedExercise: 'Noch hat keine Übung der Einheit eine Note.',
} satisfies Readonly<Record<MissingGradeId, string>>;

/** What the breakdown says besides the words of the sheet. */
export const breakdown = {
  title: '{voice, select, self {Notenübersicht zu meinem Training, {date}} other {Notenübersicht: {trainee}, {date}}}',
  sessionCaption: 'Punkte der Übungen und der Einheit, von 100',
  part: 'Teil',
  technique: 'Technik',
  gradeOf: '{exercise}: {grade}',
  gradeCell: '{mark} ({score})',
  criteriaCaption: '{exercise}: Kriterien, von 100 Punkten; angesehen: {coverage}',
  notShown: 'Von hier nicht zu sehen: {criteria}.',
  raiseLabel: 'Was die Note verbessern würde:',
  raise: '{remark} +{gain}',
  raiseOf: '{remark} ({exercise}) +{gain}',
  nothingRaises: 'Keine Notiz kostet Punkte.',
  raisesWaitForPain: 'Im Moment nichts: Die Schmerzen gehen vor.',
  stopFirst: 'Behebe zuerst, was gefährlich war: Es gibt einen Stopp.',
  byHandStays: 'Die Note ist von Hand gesetzt, und keine Notiz ändert sie.',
  rule: 'Eine Übung: {mean} gewichtetes Mittel ihrer Kriterien, {lowest} ihr niedrigstes Kriterium.',
  ruleOfPoints:
    'Eine Übung: 100 Punkte, weniger {mean, number, ::.###} dessen, was dem gewichteten Mittel ihrer Kriterien auf 100 fehlt, {lows}; ein Stopp hält sie bei {cap}.',
  ruleOfLow:
    '{share, number, ::.###} dessen, was {rank, plural, one {dem niedrigsten Kriterium} =2 {dem zweitniedrigsten} other {dem #. von unten}} auf {under} fehlt',
  ruleOfSession: 'Die Einheit: {technique} Technik, {programme} Plan.',
  ruleOfCost:
    'Die Einheit: Technik, weniger {prefer, number} (feinschleifen), {adjust, number} (anpassen) oder {correct, number} (korrigieren) Punkte je Punkt zum Plan, höchstens {most, number}; ein Stopp hält sie bei {cap}.',
  pointsOff: '−{points}',
  nothingOff: 'kein Abzug',
} satisfies Readonly<Record<BreakdownMessageId, string>>;
