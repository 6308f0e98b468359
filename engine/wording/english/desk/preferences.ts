/** What a person sets once for the whole desk. */
export const preferences = {
  language: 'Language',
  colours: 'Colours',
  system: 'Like the system',
  light: 'Light',
  dark: 'Dark',
  paper: 'Paper',
  a4: 'A4',
  usLetter: 'US Letter',
} as const;

export type PreferencesMessageId = keyof typeof preferences;
