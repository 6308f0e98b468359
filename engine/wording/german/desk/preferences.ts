import type { PreferencesMessageId } from '../../english/desk/preferences.ts';

export const preferences: Readonly<Record<PreferencesMessageId, string>> = {
  language: 'Sprache',
  colours: 'Farben',
  system: 'Wie das System',
  light: 'Hell',
  dark: 'Dunkel',
  paper: 'Papier',
  a4: 'A4',
  usLetter: 'US Letter',
};
