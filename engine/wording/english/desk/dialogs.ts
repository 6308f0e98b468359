/** The system's own dialogs: which file, which folder. */
export const dialogs = {
  handOverTitle: 'Where to hand over to',
  handOverButton: 'Hand over into this folder',
  libraryTitle: 'Folder of a library, or an empty folder for a new one',
  libraryButton: 'Open this library',
  receiveTitle: 'Folder of a handover',
  receiveButton: 'Import',
  importTitle: 'Folder of clips',
  importButton: 'Add its clips',
  watchTitle: 'Folder to watch',
  watchButton: 'Watch this folder',
  sessionFileTitle: 'A handover or a review file',
  sessionFile: 'Handover or review',
  clips: 'Clips',
  allFiles: 'All files',
  lateWindow:
    'The window has drawn nothing for a minute; the library is unharmed. Close the window and start Rackside again. It is noted in {logFile}',
} as const;

export type DialogsMessageId = keyof typeof dialogs;
