import type { Clip } from '../../../engine/review/review.ts';
import type { Column } from '../../state/cursorState.ts';

/** A column in words: "rep 2", "whole set"; with the set's number where an exercise has several: "set 2, rep 2". */
export function columnWords(column: Column, clips: readonly Clip[]): string {
  const set = clips.findIndex((clip) => clip.id === column.clipId) + 1;
  if (clips.length < 2) return column.rep === 'set' ? 'whole set' : `rep ${column.rep}`;
  return column.rep === 'set' ? `set ${set}, whole set` : `set ${set}, rep ${column.rep}`;
}
