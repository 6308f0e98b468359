import type { Clip } from '../../../engine/review/review.ts';
import { KeyHint } from '../../commands/KeyHint.tsx';
import { markEdge, removeRepAtCursor } from '../commands/repActs.ts';
import { cursorState } from '../state/cursorState.ts';

/** Marking a rep's edges at the frame on screen, for the mouse too. */
export function RepKeys({ clip }: { readonly clip: Clip }) {
  const rep = cursorState((state) => (state.column?.clipId === clip.id ? state.column.rep : 'set'));
  return (
    <fieldset className="rep-keys" aria-label="Mark reps">
      <button type="button" onClick={() => void markEdge('start')}>
        Rep start <KeyHint act="markStart" />
      </button>
      <button type="button" onClick={() => void markEdge('longEnd')}>
        Long end <KeyHint act="markLongEnd" />
      </button>
      <button type="button" onClick={() => void markEdge('end')}>
        Rep end <KeyHint act="markEnd" />
      </button>
      <button type="button" disabled={rep === 'set'} onClick={() => void removeRepAtCursor()}>
        {rep === 'set' ? 'Remove rep' : `Remove rep ${rep}`}
      </button>
    </fieldset>
  );
}
