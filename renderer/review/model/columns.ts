import { clipsOfSet, setsOf } from '../../../engine/review/camerasOfSet.ts';
import type { Clip, Reps } from '../../../engine/review/review.ts';
import type { CriterionId } from '../../../engine/rubric/rubric.ts';
import type { Column } from '../../state/cursorState.ts';
import { sayScorecard } from '../../words/sayScorecard.ts';

/** The columns of one clip: its whole set, then its reps in order. */
export const columnsOfClip = (clip: Clip): readonly Column[] => [
  { clipId: clip.id, rep: 'set' },
  ...clip.reps.map((rep): Column => ({ clipId: clip.id, rep: rep.index })),
];

export const sameColumn = (one: Column | null, other: Column | null): boolean =>
  one !== null && other !== null && one.clipId === other.clipId && one.rep === other.rep;

/** The clips whose columns stand on the card, one a set: the one on the stage where it shows the set, else the one that leads. */
export const clipsOnCard = (clips: readonly Clip[], onStage: string | null): readonly Clip[] =>
  setsOf(clips).map(({ lead, others }) => others.find(({ id }) => id === onStage) ?? lead);

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

/** The same, with those on the same reps of the other cameras of the set. */
export function remarksOfSet<T extends Remark>(
  remarks: readonly T[],
  { criterion, column }: Spot,
  clips: readonly Clip[],
): readonly T[] {
  const clip = clips.find(({ id }) => id === column.clipId);
  if (clip === undefined) return [];
  return clipsOfSet(clips, clip).flatMap((camera) =>
    remarksIn(remarks, { criterion, column: { ...column, clipId: camera.id } }, camera),
  );
}

/** Reps as a flag has them: "rep 2", "reps 2, 4", "whole set". */
export const repsWords = (reps: 'set' | readonly number[]): string =>
  reps === 'set' ? sayScorecard('wholeSet') : sayScorecard('reps', { count: reps.length, reps: reps.join(', ') });

/** A column in words: "rep 2", "whole set"; with the set's number where an exercise has several: "set 2, rep 2". */
export function columnWords(column: Column, clips: readonly Clip[]): string {
  const set = clips.findIndex((clip) => clip.id === column.clipId) + 1;
  if (column.rep === 'set') return clips.length < 2 ? sayScorecard('wholeSet') : sayScorecard('wholeSetOf', { set });
  const { rep } = column;
  return clips.length < 2 ? sayScorecard('rep', { rep }) : sayScorecard('repOf', { set, rep });
}

export type CellMove = 'left' | 'right' | 'up' | 'down' | 'first' | 'last';
/** A cell of the scorecard, where the cursor can be. */
export type CursorCell = { readonly criterion: string; readonly column: Column };

const clamp = (index: number, length: number): number => Math.min(Math.max(0, index), length - 1);

/** Where a move leads; the card's edges stop it. null on an empty card. */
export function moveCell(
  criteria: readonly string[],
  columns: readonly Column[],
  from: { readonly criterion: string | null; readonly column: Column | null },
  move: CellMove,
): CursorCell | null {
  const row = Math.max(0, criteria.indexOf(from.criterion ?? ''));
  const found = columns.findIndex((column) => sameColumn(column, from.column));
  const at = Math.max(0, found);
  const steps: Readonly<Record<CellMove, readonly [row: number, column: number]>> = {
    left: [row, at - 1],
    right: [row, at + 1],
    up: [row - 1, at],
    down: [row + 1, at],
    first: [row, columns.findIndex((column) => column.clipId === columns[at]?.clipId)],
    last: [row, columns.findLastIndex((column) => column.clipId === columns[at]?.clipId)],
  };
  const [toRow, toColumn] = steps[move];
  const criterion = criteria[clamp(toRow, criteria.length)];
  const column = columns[clamp(toColumn, columns.length)];
  return criterion === undefined || column === undefined ? null : { criterion, column };
}

const atStretchedEnd: ReadonlySet<CriterionId> = new Set(['depth', 'pauses']);

/** Whether a criterion is best judged where the rep turns round rather than where it starts. */
export const judgedAtStretchedEnd = (criterion: CriterionId): boolean => atStretchedEnd.has(criterion);
