import type { FramingMessageId } from '../../english/desk/framing.ts';

export const framing = {
  frame: 'Drehen, zuschneiden, kürzen',
  done: 'Fertig',
  intro:
    'So ist der Clip hier und in allem zu sehen, was übergeben wird; die Datei selbst bleibt, wie sie ist. Bemerkungen, Zeichnungen und Abdeckungen behalten ihren Platz.',
  direction: 'Ausrichtung',
  crop: 'Ausschnitt',
  cropHow:
    'Zieh einen Rahmen über das Bild oder verschieb ihn mit den Pfeiltasten; Alt mit Pfeiltaste ändert seine Größe.',
  cropMiddle: 'Auf die Mitte zuschneiden',
  cropNone: 'Ganzes Bild zeigen',
  cropped: 'Teil des Bildes, der bleibt',
  brightness: 'Helligkeit',
  percent: '{percent, number} %',
  asFilmed: 'Wie gefilmt',
  section: 'Kürzen und teilen',
  wholeShown: 'Die ganze Aufnahme ist zu sehen.',
  sectionShown:
    'Zu sehen ist die Aufnahme von {from} bis {to}. Nur dieser Abschnitt wird übergeben, und die Zeiten zählen ab seinem Beginn.',
  wholeFootage: 'Ganze Aufnahme zeigen',
  splitSets: 'In {count} Sätze teilen, bei {at}',
  splitHere: 'Hier teilen, bei {at}',
  reset: 'Bild wieder wie gefilmt',
} as const satisfies Readonly<Record<FramingMessageId, string>>;
