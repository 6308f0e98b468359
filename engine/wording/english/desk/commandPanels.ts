/** Palette and key sheet, and what commands tell when they have run. */
export const commandPanels = {
  findAction: 'Find an action',
  typeAction: 'Type an action',
  actions: 'Actions',
  noAction: 'No action matches.',
  judgeAs: 'Judge this as: {exercise}',
  keys: 'Keys',
  pressKey: 'Press the new key for “{action}”; Escape keeps the old one.',
  usualKeys: 'Reset all keys',
  usualAgain: 'All keys have been reset.',
  or: ' or ',
  change: 'Change',
  changeKey: 'Change the key for: {action}',
  usual: 'Reset',
  usualKey: 'Reset the key for: {action}',
  windowKey: 'The window itself uses {keys}; choose another key.',
  takenKey: '“{action}” already uses {keys}; change that first or choose another key.',
  usualTaken: '“{action}” now uses its usual key; change that first.',
  reportSaved: 'Problem report saved: {path}',
} as const;

export type CommandPanelId = keyof typeof commandPanels;
