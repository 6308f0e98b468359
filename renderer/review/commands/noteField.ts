import { showPanel } from './measuring.ts';
import type { ReviewContext } from './reviewContext.ts';

/** Puts the focus in the note of a flag; what is typed until it is there is kept for it. */
export function openNote({ cursor, typing, focus }: ReviewContext, flagId: string): void {
  showPanel('card');
  cursor.chooseFlag(flagId);
  typing.hold();
  focus.onNote(flagId, typing.stick);
}
