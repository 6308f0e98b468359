import type { CautionsMessageId } from '../../english/desk/cautions.ts';

export const cautions: Readonly<Record<CautionsMessageId, string>> = {
  title: 'Sicherheitshinweise',
  pain: 'Schmerzen notiert',
  note: '„{note}“',
  painNote: 'Schmerzen notiert: „{note}“',
  stop: 'Stopp-Bemerkung: {voice, select, self {das geht allem anderen vor} other {sag das vor allem anderen}}',
  minor: '{voice, select, self {Ich bin unter 18} other {Unter 18}}',
  lifts: 'Vorsicht bei diesen Übungen',
  read: 'Hinweise lesen',
};
