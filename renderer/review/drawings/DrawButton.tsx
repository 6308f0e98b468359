import { PencilLine } from 'lucide-react';
import { KeyHint } from '../../commands/KeyHint.tsx';
import { leaveDrawing, startDrawing } from '../commands/drawActs.ts';
import { drawingState } from '../state/drawingState.ts';

/** Takes the drawing tools out, or puts them away. */
export function DrawButton({ disabled }: { readonly disabled?: true }) {
  const on = drawingState((state) => state.drawing === 'on');
  return (
    <button type="button" aria-expanded={on} disabled={disabled} onClick={() => (on ? leaveDrawing() : startDrawing())}>
      <PencilLine aria-hidden="true" /> Draw <KeyHint act="draw" />
    </button>
  );
}
