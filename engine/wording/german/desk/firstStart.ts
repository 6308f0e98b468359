import type { FirstStartMessageId } from '../../english/desk/firstStart.ts';

export const firstStart: Readonly<Record<FirstStartMessageId, string>> = {
  lead: 'Technik im Video bewerten. Clips, Bemerkungen und Briefe bleiben auf diesem Rechner.',
  makingDemo: 'Die Demo wird angelegt. Das dauert ein paar Sekunden.',
  withoutDemo: 'Ohne die Demo weitermachen',
  startWith: 'Womit es losgeht',
  demo: 'Mit der Demo',
  demoWords: 'Eine erfundene Einheit mit Clips, Wiederholungen, Bemerkungen und Noten zum Umsehen.',
  empty: 'Mit einer leeren Bibliothek',
  emptyWords:
    'Darin ist noch nichts. {voice, select, self {Als Nächstes lege ich eine Einheit an und ziehe ihre Clips hinein.} other {Leg deine Athleten an und zieh ihre Clips hinein.}}',
  who: 'Wer bewertet',
  coach: 'Ein Coach',
  coachWords: 'Briefe gehen an die Leute, die {voice, select, self {ich trainiere} other {du trainierst}}.',
  self: 'Ich selbst',
  selfWords: 'Briefe sind Notizen an mich über meine eigenen Sätze.',
  name: '{voice, select, self {Mein Name} other {Name unter deinen Briefen}}',
  start: 'Los geht’s',
};
