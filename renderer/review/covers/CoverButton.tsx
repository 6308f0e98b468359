import { EyeOff } from 'lucide-react';
import { KeyHint } from '../../parts/KeyHint.tsx';
import { coverState } from '../../state/coverState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { leaveCovering, startCovering } from '../acts/coverActs.ts';

/** Begins or ends covering faces and places; not there in a session that is only read. */
export function CoverButton({ disabled }: { readonly disabled?: true }) {
  const on = coverState((state) => state.covering === 'on');
  const readOnly = reviewState((state) => state.data?.readOnly === true);
  if (readOnly) return null;
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
