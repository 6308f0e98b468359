import { EyeOff } from 'lucide-react';
import { KeyHint } from '../../commands/KeyHint.tsx';
import { leaveCovering, startCovering } from '../commands/coverActs.ts';
import { coverState } from '../state/coverState.ts';

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
