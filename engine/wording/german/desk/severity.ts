import type { SeverityMessageId } from '../../english/desk/severity.ts';

export const severity: Readonly<Record<SeverityMessageId, string>> = {
  keep: 'beibehalten',
  prefer: 'feinschleifen',
  adjust: 'anpassen',
  correct: 'korrigieren',
  stop: 'Stopp',
  fine: 'passt',
  keepTitle: 'Beibehalten',
  preferTitle: 'Feinschleifen',
  adjustTitle: 'Anpassen',
  correctTitle: 'Korrigieren',
  stopTitle: 'Stopp',
  fineTitle: 'Passt',
  keepMeans: 'Lob',
  preferMeans: 'Kleinigkeit',
  adjustMeans: 'geht, kostet aber etwas',
  correctMeans: 'verfehlt den Zweck',
  stopMeans: 'gefährlich',
  key: 'Was die Zeichen bedeuten',
};
