/** Parts that many screens use: dialogs, the list of exercises, what there is to train with. */
export const parts = {
  close: 'Close',
  cancel: 'Cancel',
  save: 'Save',
  exercise: 'Exercise',
  exercises: 'Exercises',
  noExercise: 'No exercise matches',
  notInLibrary: '{id} (not in the library)',
  inSession: 'In this session',
  library: 'Library',
  noEquipment: 'nothing',
  pickItems: 'Pick items',
  items: '{label}: items',
  received: 'Received from another coach’s Rackside.',
  receivedWords: 'It is shown as it was handed over and can’t be changed here.',
} as const;

export type PartsMessageId = keyof typeof parts;
