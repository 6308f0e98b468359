import type { OfferedMessageId } from '../../motion/measurement.ts';

/** What is said of movements that were not counted, and why each may be no rep. */
export const offered = {
  notCounted: '{count, plural, one {Eine Bewegung zählt nicht mit} other {# Bewegungen zählen nicht mit}}',
  cutOffAtStart: 'der Clip beginnt mittendrin',
  cutOffAtEnd: 'der Clip endet mittendrin',
  short: 'sie ist viel kürzer als die Wiederholungen',
  failed: 'es ging zurück, bevor der Weg geschafft war, wie bei einem Fehlversuch',
  maybeSetUp: 'sie gehört vielleicht noch zur Vorbereitung',
  maybePutDown: 'sie gehört vielleicht schon zum Ablegen oder Weggehen',
  otherHeight: 'sie beginnt oder endet auf anderer Höhe als die Wiederholungen',
  poorlySeen: 'davon ist zu wenig zu sehen',
  nearSway: 'sie ist kaum größer als das Schwanken im Stehen',
  unlike: 'im Clip gibt es zu wenig, was ihr gleicht',
} as const satisfies Readonly<Record<OfferedMessageId, string>>;
