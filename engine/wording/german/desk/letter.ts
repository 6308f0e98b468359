import type { LetterMessageId } from '../../english/desk/letter.ts';

export const letter: Readonly<Record<LetterMessageId, string>> = {
  opening: 'Der Brief wird geöffnet …',
  review: 'Bewertung',
  document: 'Dokument',
  letter: 'Brief',
  sheet: 'Bewertungsbogen',
  shortSheet: 'Kurzer Bewertungsbogen',
  breakdown: 'Notenübersicht',
  filmingCard: 'So wird gefilmt',
  preview: 'Vorschau: {document}',
  sentPreview: 'Brief wie verschickt, Version {version}',
  edit: 'Brief bearbeiten',
  sheetLength: 'Länge des Bewertungsbogens',
  full: 'Lang',
  short: 'Kurz',

  style: 'Wie der Brief geschrieben ist',
  length: 'Länge',
  tone: 'Ton',
  language: 'Sprache',
  plain: 'Sachlich',
  warm: 'Herzlich',
  direct: 'Direkt',

  saveThis: 'Dieses Dokument speichern',
  format: 'Format',
  stills: 'Standbilder',
  save: 'Speichern',
  saving: 'Wird gespeichert …',
  savedTo: 'Gespeichert unter {path}',
  formatPdf: 'PDF',
  formatHtml: 'HTML',
  formatMarkdown: 'Markdown',
  formatText: 'Text',
  formatCsv: 'CSV (Tabelle)',
  formatVtt: 'WebVTT (Notizen über dem Clip)',
  formatSrt: 'SubRip (Notizen über dem Clip)',
  formatJson: 'JSON (mit Messwerten)',
  formatAnnotation: 'Web Annotation (JSON-LD)',

  paragraphs: 'Absätze des Briefs',
  editParagraph: 'Bearbeiten',
  editParagraphOf: 'Bearbeiten: {words}',
  inOwnWords: 'Absatz in {voice, select, self {meinen} other {deinen}} eigenen Worten',
  done: 'Fertig',
  revert: 'Verwerfen',
  stale:
    'Seit {voice, select, self {ich das geschrieben habe} other {du das geschrieben hast}}, hat sich etwas geändert.',
  staleWords: 'Ohne {voice, select, self {meine} other {deine}} Änderung stünde hier: „{words}“',
  fixed: 'Nicht änderbar',
  waiting: 'Zurückgestellte Änderungen',
  waitingWords:
    'Der Brief lässt sie vorerst weg: Die Absätze, die sie ersetzen, gibt es gerade nicht. Mit ihnen kommen sie zurück.',

  leaveOut: 'Weglassen',
  leaveOutOf: 'Weglassen: {words}',
  moveUpOf: 'Nach oben: {words}',
  moveDownOf: 'Nach unten: {words}',
  dragOf: 'An eine andere Stelle ziehen: {words}',
  addBelowOf: 'Absatz darunter hinzufügen: {words}',
  nothingYet: '(noch nichts geschrieben)',
  ownParagraph: '{voice, select, self {Mein} other {Dein}} eigener Absatz',
  staleOwn:
    'Seit {voice, select, self {ich das geschrieben habe} other {du das geschrieben hast}}, wurden Schmerzen oder etwas Gefährliches notiert.',
  leftOut: 'Weggelassen',
  leftOutWords: 'Diese Absätze stehen nicht im Brief.',
  bringBack: 'Zurückholen',
  bringBackOf: 'Zurückholen: {words}',
  removeOwn: 'Löschen',
  removeOwnOf: 'Löschen: {words}',
  phrases: 'Textbausteine',
  phrasesChange: 'Textbausteine ändern',
  phraseInsert: 'Einfügen: {name}',
  typingHelp: 'Ein leerer Absatz wird weggelassen. Die Eingabetaste beginnt einen neuen.',

  sendAgainTitle:
    '{voice, select, self {Denselben Brief noch einmal festhalten?} other {Denselben Brief noch einmal als verschickt markieren?}}',
  sendAgainWords: 'Seit Version {version} hat sich nichts geändert.',
  sendAgain:
    '{voice, select, self {Als Version {version} festhalten} other {Als verschickt markieren, Version {version}}}',

  sent: '{voice, select, self {Festgehalten} other {Verschickt}}',
  sentLetters: '{voice, select, self {Festgehaltene Briefe} other {Verschickte Briefe}}',
  sentWords:
    '{voice, select, self {Ein festgehaltener Brief bleibt mit seinen Bemerkungen und seinem Bewertungsraster, wie er ist.} other {Ein verschickter Brief bleibt mit seinen Bemerkungen und seinem Bewertungsraster, wie er ist.}} Eine Korrektur wird zur nächsten Version.',
  staleCount:
    '{voice, select, self {{count, plural, one {Ein Absatz von mir beruht auf etwas, das sich geändert hat.} other {# Absätze von mir beruhen auf etwas, das sich geändert hat.}} Das prüfe ich vor dem Festhalten.} other {{count, plural, one {Ein Absatz von dir beruht auf etwas, das sich geändert hat.} other {# Absätze von dir beruhen auf etwas, das sich geändert hat.}} Prüf das vor dem Verschicken.}}',
  markSent: '{voice, select, self {Diese Version festhalten} other {Als verschickt markieren}}',
  markSentAgain:
    '{voice, select, self {Als Version {version} festhalten} other {Als verschickt markieren, Version {version}}}',
  version: 'Version {version}, {date}',
  versionAndMark: 'Version {version}, {date}, {mark}',

  secondLook: 'Zweitbewertung',
  secondLookTitle:
    '{voice, select, self {Würde ich noch einmal so bewerten?} other {Würdest du noch einmal so bewerten?}}',
  secondLookWords:
    '{voice, select, self {Dieselben Clips noch einmal bewerten} other {Bewerte dieselben Clips noch einmal}}, ohne die erste Bewertung zu sehen. Am besten ein paar Tage später.',
  compareLooks: 'Mit der letzten vergleichen',
  lookUnderWay: 'Zweitbewertung läuft',
  lookUnderWayWords: 'Zu dieser Einheit läuft eine Zweitbewertung.',
  doNotRead:
    '{voice, select, self {Diese Bewertung lese ich} other {Lies diese Bewertung}} besser erst, wenn die Zweitbewertung fertig ist.',
  continueLook: 'Zweitbewertung fortsetzen',
};
