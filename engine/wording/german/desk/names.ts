import type { NamesMessageId } from '../../english/desk/names.ts';

/** Stellen, an denen ein verborgener Name stehen kann, bevor etwas übergeben wird. */
export const names: Readonly<Record<NamesMessageId, string>> = {
  title: 'Namen prüfen',
  explain:
    '{count, plural, one {Hier steht vielleicht ein Name, der verborgen werden soll, oder ein gewöhnliches Wort. Bis das entschieden ist, wird nichts übergeben.} other {Hier stehen vielleicht Namen, die verborgen werden sollen, oder gewöhnliche Wörter. Bis das entschieden ist, wird nichts übergeben.}}',
  ofSession: 'Namen prüfen: {session}',
  places: '{count, plural, one {# Stelle} other {# Stellen}}',
  hide: 'Verbergen',
  hideAt: 'Verbergen: „{word}“, {where}',
  noName: 'Kein Name',
  noNameAt: 'Kein Name: „{word}“, {where}',
  edit: 'Bearbeiten',
  editAt: 'Bearbeiten: {where}',
  listen: 'Anhören',
  hideAll: 'Alle {count} verbergen',
  hideAllOf: 'Alle {count} verbergen: {session}',
  noneIsName: 'Nichts davon ist ein Name',
  noneIsNameOf: 'Nichts davon ist ein Name: {session}',
  notSaid: 'Name fällt nicht',
  notSaidIn: 'Name fällt nicht: {clip}',
  voiceWords:
    '{voice, select, self {Was ich hier sage, wurde nicht auf meinen Namen geprüft.} other {Was du hier sagst, wurde nicht auf den Namen geprüft.}}',
  hidden: '{count, plural, one {Ein Name ist} other {# Namen sind}} verborgen.',
  kept: '{count, plural, one {Ein Wort bleibt, wie es ist.} other {# Wörter bleiben, wie sie sind.}}',
  undo: 'Rückgängig',
  checkFirst: '{count, plural, one {Erst # Stelle prüfen} other {Erst # Stellen prüfen}}',
  inTitle: 'Titel',
  inNotes: 'Notizen zur Einheit',
  inPainNote: 'Angabe zu Schmerzen',
  inReason: 'Grund für die Note',
  inClipName: 'Name des Clips',
  inDrawnText: 'Gezeichneter Text',
  inNote: 'Kommentar einer Bemerkung',
  inCue: 'Hinweis',
  inLetter: 'Brief',
  inVoice: 'Audiokommentar',
};
