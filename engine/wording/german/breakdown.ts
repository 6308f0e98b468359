import type { BreakdownMessageId } from '../english/breakdown.ts';

/** What the breakdown says besides the words of the sheet. */
export const breakdown = {
  title: 'Notenübersicht: {trainee}, {date}',
  sessionCaption: 'Punkte der Übungen und der Einheit, von 100',
  part: 'Teil',
  technique: 'Technik',
  gradeOf: '{exercise}: {grade}',
  gradeCell: '{mark} ({score})',
  criteriaCaption: '{exercise}: Kriterien, von 100 Punkten; angesehen: {coverage}',
  notShown: 'In dieser Ansicht nicht zu sehen: {criteria}.',
  raiseLabel: 'Was die Note heben würde:',
  raise: '{remark} +{gain}',
  nothingRaises: 'Keine Bemerkung kostet Punkte.',
  rule: 'Eine Übung: {mean} gewichtetes Mittel ihrer Kriterien, {lowest} ihr niedrigstes Kriterium.',
  ruleOfSession: 'Die Einheit: {technique} Technik, {programme} Plan.',
} satisfies Readonly<Record<BreakdownMessageId, string>>;
