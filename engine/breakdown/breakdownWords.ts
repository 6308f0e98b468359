import type { Language } from '../language/language.ts';

/** The texts of a breakdown that the sheet doesn't have already, with `{places}` for what they speak of. */
export type BreakdownWords = {
  readonly title: string;
  readonly sessionCaption: string;
  readonly part: string;
  readonly technique: string;
  readonly gradeOf: string;
  readonly gradeCell: string;
  readonly criteriaCaption: string;
  readonly notShown: string;
  readonly raiseLabel: string;
  readonly raise: string;
  readonly nothingRaises: string;
  readonly rule: string;
  readonly ruleOfSession: string;
};

const english: BreakdownWords = {
  title: 'Grade breakdown: {trainee}, {date}',
  sessionCaption: 'Scores of the exercises and of the session, out of 100',
  part: 'Part',
  technique: 'Technique',
  gradeOf: '{exercise}: {grade}',
  gradeCell: '{letter} ({score})',
  criteriaCaption: 'Criteria of {exercise}, out of 100; looked at: {coverage}',
  notShown: 'Not shown by this view: {criteria}.',
  raiseLabel: 'What would raise it:',
  raise: '{remark} +{gain}',
  nothingRaises: 'no remark costs points.',
  rule: 'An exercise: {mean} weighted mean of its criteria, {lowest} its lowest criterion.',
  ruleOfSession: 'The session: {technique} technique, {programme} programme.',
};

const german: BreakdownWords = {
  title: 'Notenübersicht: {trainee}, {date}',
  sessionCaption: 'Punkte der Übungen und der Einheit, von 100',
  part: 'Teil',
  technique: 'Technik',
  gradeOf: '{exercise}: {grade}',
  gradeCell: '{letter} ({score})',
  criteriaCaption: '{exercise}: Kriterien, von 100 Punkten; angesehen: {coverage}',
  notShown: 'In dieser Ansicht nicht zu sehen: {criteria}.',
  raiseLabel: 'Was die Note heben würde:',
  raise: '{remark} +{gain}',
  nothingRaises: 'Keine Bemerkung kostet Punkte.',
  rule: 'Eine Übung: {mean} gewichtetes Mittel ihrer Kriterien, {lowest} ihr niedrigstes Kriterium.',
  ruleOfSession: 'Die Einheit: {technique} Technik, {programme} Plan.',
};

/** The breakdown's words by language. */
export const breakdownWords: Readonly<Record<Language, BreakdownWords>> = { en: english, de: german };
