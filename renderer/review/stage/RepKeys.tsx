import type { Clip } from '../../../engine/review/review.ts';
import { cursorState } from '../../state/cursorState.ts';
import { markEnd, markLongEnd, markStart, removeRep } from '../commands/markingReps.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';

/** Marking a rep's edges at the frame on screen, for the mouse too. */
export function RepKeys({ clip }: { readonly clip: Clip }) {
  const rep = cursorState((state) => (state.column?.clipId === clip.id ? state.column.rep : 'set'));
  return (
    <fieldset className="rep-keys" aria-label="Mark reps">
      <ReviewButton command={markStart} />
      <ReviewButton command={markLongEnd} />
      <ReviewButton command={markEnd} />
      <ReviewButton command={removeRep} shows="words" words={rep === 'set' ? 'Remove rep' : `Remove rep ${rep}`} />
    </fieldset>
  );
}
