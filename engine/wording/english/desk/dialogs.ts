/** The system's own dialogs: which file, which folder. */
export const dialogs = {
  handOverTitle: 'Where to hand over to',
  handOverButton: 'Hand over into this folder',
  libraryTitle: 'Choose a library’s folder, or an empty one for a new library',
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
    'The window has stayed empty for a minute; the library is unharmed. Close it and start Rackside again. Details are in {logFile}',
} as const;

export type DialogsMessageId = keyof typeof dialogs;
