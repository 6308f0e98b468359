import type { NightMessageId } from '../../english/desk/night.ts';

export const night: Readonly<Record<NightMessageId, string>> = {
  next: 'Nächster Schritt',
  nextOf: 'Nächster Schritt: {step}, {session}',
  import: 'Clips hinzufügen',
  judge: 'bewerten',
  letter: 'Brief und Übergabe',
  nothingDue: 'Sonst ist nichts fällig.',
  allDone: 'Nichts ist fällig. Alles ist {voice, select, self {bewertet und festgehalten} other {verschickt}}.',

  due: '{more, select, yes {Mehr als {count} Einheiten fällig} other {{count, plural, one {# Einheit fällig} other {# Einheiten fällig}}}}',
  late: '{count} überfällig',
  minutes: 'noch etwa {minutes} min für {clips, plural, one {# Clip} other {# Clips}}',
  hours: 'noch etwa {hours} h für {clips, plural, one {# Clip} other {# Clips}}',
  clipsLeft: '{clips, plural, =0 {alle Clips bewertet} one {noch # Clip zu bewerten} other {noch # Clips zu bewerten}}',
  paceToday: 'Im Tempo von heute: etwa {minutes} min pro Clip, lange Pausen nicht mitgezählt.',
  paceLastDays: 'Im Tempo der letzten Tage: etwa {minutes} min pro Clip, lange Pausen nicht mitgezählt.',

  state: 'Stand',
  new: 'Neu',
  inWork: 'In Arbeit',
  judged: 'Bewertet',
  sent: '{voice, select, self {Festgehalten} other {Verschickt}}',
  changedSince: 'Seither geändert',
  finished: 'Abgeschlossen, {voice, select, self {nichts behalten} other {ohne Brief}}',
  measuredOf: '{measured} von {clips} gemessen',
  dueIn: '{days, plural, one {morgen fällig} other {in # Tagen fällig}}',
  dueToday: 'heute fällig',
  daysLate: '{days, plural, one {1 Tag überfällig} other {# Tage überfällig}}',
  came: 'Der erste Clip kam am {day}',
  waitsForClips: 'wartet auf Clips',

  toDo: 'Zu tun',
  doneSessions: 'Erledigt',
};
