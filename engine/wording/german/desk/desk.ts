import type { DeskMessageId } from '../../english/desk/desk.ts';

export const desk: Readonly<Record<DeskMessageId, string>> = {
  title: 'Übersicht',
  selfReview: 'Eigene Einheiten',
  agreement: 'Übereinstimmung',
  handOver: 'Übergeben',
  addTrainee: '{voice, select, self {Über mich} other {Athlet anlegen}}',
  addSession: 'Einheit anlegen',
  sessions: 'Einheiten',
  jobs: 'Aufträge',
  moreDue: 'Weitere fällige Einheiten zeigen',
  moreDone: 'Weitere erledigte Einheiten zeigen',
  moreSecondLooks: 'Weitere Zweitbewertungen zeigen',

  nothingYet: 'Noch nichts zu bewerten',
  whoTrains:
    '{voice, select, self {Mein Ziel, meine Gewichtseinheit und meine Ausrüstung eintragen.} other {Leg den Athleten an, dessen Technik du bewertest.}}',
  traineeAdded:
    '{voice, select, self {Meine Angaben sind da.} other {{count, plural, one {Ein Athlet ist angelegt.} other {# Athleten sind angelegt.}}}}',
  addNextTrainee: '{voice, select, self {Weitere Person anlegen} other {Weiteren Athleten anlegen}}',
  addFirstTrainee: '{voice, select, self {Über mich} other {Athlet anlegen}}',
  firstSession: '{voice, select, self {Eine Einheit anlegen} other {Leg eine Einheit an}}: einen Trainingstag.',
  addFirstSession: 'Einheit anlegen',
  dropHere:
    '{voice, select, self {Clips darauf ziehen} other {Zieh Clips darauf}}: einen pro Satz, von jedem Handy. Sie werden in {voice, select, self {meine} other {deine}} Bibliothek kopiert und bleiben auf diesem Rechner.',
  openIt:
    '{voice, select, self {Öffnen} other {Öffne sie}}: abspielen, Wiederholungen markieren, die Wertungskarte ausfüllen und den Brief schreiben.',
  lookAround: 'Erst einmal umsehen? Die Demo ist eine erfundene Einheit, fertig bewertet und mit Brief.',
  addDemo: 'Demo hinzufügen',

  importClips: 'Clips importieren',
  dropClips:
    '{voice, select, self {Clips oder ganze Ordner hierher ziehen oder einzelne Clips direkt auf eine Einheit} other {Zieh Clips oder ganze Ordner hierher oder einzelne Clips direkt auf eine Einheit}}.',
  copied:
    'Sie werden in {voice, select, self {meine} other {deine}} Bibliothek kopiert. Nichts verlässt diesen Rechner.',
  fromAnotherCoach: 'Aus dem Rackside eines anderen Coachs',
  receiveWords: 'Importierte Übergaben sind nur lesbar; aus einer Bewertungsdatei wird eine eigene Einheit.',
  receiveFile: 'Zip- oder Bewertungsdatei',
  receiveFolder: 'Ordner',

  trainee: '{voice, select, self {Einheit} other {Athlet}}',
  date: 'Datum',
  pictures: 'Bilder',
  exercises: 'Übungen',
  acts: 'Aktionen',
  clips: 'Clips',
  grade: 'Note',
  gradeFacts: '{share} angesehen, {flags, plural, one {# Bemerkung} other {# Bemerkungen}}',
  mySession: 'Meine Einheit',
  received: 'Empfangen, nur lesbar',
  damaged: 'Beschädigt',
  listsDamaged:
    'Ein Fehler des Datenträgers hat Einträge in diesen Listen verändert oder gelöscht: {lists}. Was verändert ist, öffnet Rackside nicht; alles andere ist sicher. Im Ordner „backups“ der Bibliothek liegt vielleicht eine unbeschädigte Kopie.',
  damagedTrainees: '{voice, select, self {Personen} other {Athleten}}',
  damagedSessions: 'Einheiten',
  damagedInbox: 'Eingang',
  noExercises: 'noch keine',
  provisional: 'vorläufig',
  byHand: 'von Hand gesetzt',
  historyOf: 'Verlauf: {name}',
  importInto: 'Clips importieren: {session}',

  secondLooks: 'Zweitbewertungen',
  secondLooksWords:
    'Dieselben Clips noch einmal bewertet, ohne die erste Bewertung zu sehen. Eine Zweitbewertung muss fertig sein, bevor {voice, select, self {ich vergleiche} other {du vergleichst}}.',
  shareLookedAt: '{share} angesehen',
  compare: 'Vergleichen',

  addTraineeTitle: '{voice, select, self {Über mich} other {Athlet anlegen}}',
  saveTrainee: '{voice, select, self {Speichern} other {Anlegen}}',
  name: '{voice, select, self {Mein Name} other {Name}}',
  noTraineeYet:
    '{voice, select, self {Zu einer Einheit gehört jemand, der trainiert hat. Die Person lege ich zuerst an; danach kommt die Einheit.} other {Zu einer Einheit gehört ein Athlet, und es gibt noch keinen. Leg erst einen an; danach kommt die Einheit.}}',
  addSessionTitle: 'Einheit anlegen',
  whoTrained: '{voice, select, self {Wer trainiert hat} other {Athlet}}',
  sessionTitle: 'Titel',
  titleExample: 'Unterkörper, Woche 3',
};
