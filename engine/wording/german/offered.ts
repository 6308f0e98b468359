import type { OfferedMessageId } from '../../motion/measurement.ts';

/** What is said of movements that were not counted, and why each may be no rep. */
export const offered = {
  notCounted:
    '{count, plural, one {Eine Bewegung wurde nicht als Wiederholung gezählt} other {# Bewegungen wurden nicht als Wiederholungen gezählt}}',
  cutOffAtStart: 'der Clip beginnt mittendrin',
  cutOffAtEnd: 'der Clip endet mittendrin',
  short: 'sie geht viel weniger weit als die Wiederholungen',
  failed: 'sie kehrte um, bevor die Last ganz gehoben war, wie bei einem Fehlversuch',
  maybeSetUp: 'sie gehört vielleicht noch zur Vorbereitung',
  maybePutDown: 'sie gehört vielleicht schon zum Ablegen oder Weggehen',
  otherHeight: 'sie beginnt oder endet auf einer anderen Höhe als die Wiederholungen',
  poorlySeen: 'davon ist zu wenig zu sehen',
  nearSway: 'sie ist kaum größer als das Schwanken beim ruhigen Stehen',
  gesture: 'die Hände bewegen sich wie bei einer Geste, nicht wie bei dieser Übung',
  unlike: 'im Clip gibt es zu wenige ähnliche Bewegungen',
} as const satisfies Readonly<Record<OfferedMessageId, string>>;
