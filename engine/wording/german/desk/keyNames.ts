import type { KeyNameId } from '../../english/desk/keyNames.ts';

export const keyNames: Readonly<Record<KeyNameId, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  PageUp: 'Bild ↑',
  PageDown: 'Bild ↓',
  Home: 'Pos1',
  End: 'Ende',
  Delete: 'Entf',
  Insert: 'Einfg',
  Backspace: 'Rücktaste',
  Enter: 'Eingabe',
  Space: 'Leertaste',
  Shift: 'Umschalt',
  Mod: 'Strg',
};
