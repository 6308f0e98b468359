/** Keys as they are printed on a keyboard, by their names in chords. */
export const keyNames = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  PageUp: 'Page up',
  PageDown: 'Page down',
  Home: 'Home',
  End: 'End',
  Delete: 'Delete',
  Insert: 'Insert',
  Backspace: 'Backspace',
  Enter: 'Enter',
  Space: 'Space',
  Shift: 'Shift',
  Mod: 'Ctrl',
} as const;

export type KeyNameId = keyof typeof keyNames;
