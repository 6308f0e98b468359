import type { InboxFile } from '../../electron/contract/inbox.ts';

/** The columns that the keys go through, in order; a self-review has no trainee. */
export const inboxColumns = ['file', 'trainee', 'session', 'exercise', 'view', 'load'] as const;
export type InboxColumn = (typeof inboxColumns)[number];

/** A column that can be changed. */
export type ChoiceColumn = Exclude<InboxColumn, 'file'>;

/** The columns of a library. */
export const columnsFor = (self: boolean): readonly InboxColumn[] =>
  inboxColumns.filter((column) => !self || column !== 'trainee');

/** What keeps a file from being brought in; null where nothing does. */
export type Hindrance = 'reading' | 'stopped' | 'failed' | 'twin' | 'needsTrainee' | 'needsExercise';

/** Whether a file can be brought in as it stands, or what is missing first. */
export function hindranceOf({ state, twins, sameAs, anyway, placement }: InboxFile): Hindrance | null {
  if (state === 'waiting') return 'reading';
  if (state !== 'read') return state;
  if ((twins.length > 0 || sameAs !== null) && !anyway) return 'twin';
  if (placement.trainee === null || placement.session === null) return 'needsTrainee';
  return placement.exercise === null ? 'needsExercise' : null;
}

/** Where the cursor starts: on the first gap that a person has to fill, else on the first file. */
export function firstGap(files: readonly InboxFile[]): { readonly id: string; readonly column: InboxColumn } | null {
  const gapOf = (file: InboxFile): InboxColumn | null => {
    const hindrance = hindranceOf(file);
    return hindrance === 'needsTrainee' ? 'trainee' : hindrance === 'needsExercise' ? 'exercise' : null;
  };
  for (const file of files) {
    const column = gapOf(file);
    if (column !== null) return { id: file.arrivalId, column };
  }
  const first = files[0];
  return first === undefined ? null : { id: first.arrivalId, column: 'exercise' };
}
