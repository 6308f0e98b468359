/** The system's own dialogs: which file, which folder. */
export const dialogs = {
  handOverTitle: 'Where to hand over to',
  handOverButton: 'Hand over into this folder',
  receiveTitle: 'Folder of a handover',
  receiveButton: 'Import',
  importTitle: 'A folder of clips',
  importButton: 'Take its clips in',
  watchTitle: 'The folder to watch',
  watchButton: 'Watch this folder',
  sessionFileTitle: 'A handover or a review file',
  sessionFile: 'Handover or review',
  clips: 'Clips',
  allFiles: 'All files',
} as const;

export type DialogsMessageId = keyof typeof dialogs;
