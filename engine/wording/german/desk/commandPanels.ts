import type { CommandPanelId } from '../../english/desk/commandPanels.ts';

export const commandPanels: Readonly<Record<CommandPanelId, string>> = {
  findAction: 'Aktion suchen',
  typeAction: 'Aktion eintippen',
  actions: 'Aktionen',
  noAction: 'Keine Aktion passt dazu.',
  judgeAs: 'Beurteilen als: {exercise}',
  keys: 'Tasten',
  pressKey: 'Drück die neue Taste für „{action}“; Esc behält die alte.',
  usualKeys: 'Alle Tasten zurücksetzen',
  usualAgain: 'Alle Tasten sind wieder die üblichen.',
  or: ' oder ',
  change: 'Ändern',
  changeKey: 'Taste ändern für: {action}',
  usual: 'Zurücksetzen',
  usualKey: 'Taste zurücksetzen für: {action}',
  windowKey: '{keys} braucht das Fenster selbst; wähl eine andere Taste.',
  takenKey: '{keys} gehört schon zu „{action}“; ändere das zuerst oder wähl eine andere Taste.',
  usualTaken: 'Die übliche Taste gehört jetzt zu „{action}“; ändere das zuerst.',
  reportSaved: 'Problembericht gespeichert: {path}',
};
