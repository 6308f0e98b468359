import type { Clip, Reps } from '../../../engine/review/review.ts';
import type { CriterionId } from '../../../engine/rubric/rubric.ts';
import type { Column } from '../../state/cursorState.ts';

/** The columns of one clip: its whole set, then its reps in order. */
export const columnsOfClip = (clip: Clip): readonly Column[] => [
  { clipId: clip.id, rep: 'set' },
  ...clip.reps.map((rep): Column => ({ clipId: clip.id, rep: rep.index })),
];

export const sameColumn = (one: Column | null, other: Column | null): boolean =>
  one !== null && other !== null && one.clipId === other.clipId && one.rep === other.rep;

/** Stable name of a column, for keys and selectors. */
export const columnKey = (column: Column): string => `${column.clipId}/${column.rep}`;

type Remark = { readonly clip: string; readonly criterion: CriterionId; readonly reps: Reps };
type Spot = { readonly criterion: CriterionId; readonly column: Column };

/** Remarks whose reps are no longer marked count for the whole set, as in the grade. */
function isIn(reps: Reps, column: Column, clip: Clip): boolean {
  const isMarked = (rep: number): boolean => clip.reps.some((known) => known.index === rep);
  if (column.rep === 'set') return reps === 'set' || !reps.some(isMarked);
  return reps !== 'set' && reps.includes(column.rep) && isMarked(column.rep);
}

/** The flags or ticks that belong to a cell itself; those on the whole set belong to the Set column alone. */
export function remarksIn<T extends Remark>(
  remarks: readonly T[],
  { criterion, column }: Spot,
  clip: Clip,
): readonly T[] {
  return remarks.filter(
    (remark) => remark.clip === column.clipId && remark.criterion === criterion && isIn(remark.reps, column, clip),
  );
}

/** A column in words: "rep 2", "whole set"; with the set's number where an exercise has several: "set 2, rep 2". */
export function columnWords(column: Column, clips: readonly Clip[]): string {
  const set = clips.findIndex((clip) => clip.id === column.clipId) + 1;
  if (clips.length < 2) return column.rep === 'set' ? 'whole set' : `rep ${column.rep}`;
  return column.rep === 'set' ? `set ${set}, whole set` : `set ${set}, rep ${column.rep}`;
}
