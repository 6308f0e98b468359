import { EyeOff } from 'lucide-react';
import { KeyHint } from '../../keys/KeyHint.tsx';
import { coverState } from '../../state/coverState.ts';
import { leaveCovering, startCovering } from '../acts/coverActs.ts';

/** Begins or ends covering faces and places. */
export function CoverButton({ disabled }: { readonly disabled?: true }) {
  const on = coverState((state) => state.covering === 'on');
  return (
    <button
      type="button"
      aria-expanded={on}
      disabled={disabled}
      onClick={() => (on ? leaveCovering() : startCovering())}
    >
      <EyeOff aria-hidden="true" /> Cover <KeyHint act="cover" />
    </button>
  );
}
