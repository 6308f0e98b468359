import type { Overridden } from '../../engine/grading/grade.ts';
import { points } from '../base/figures.ts';

/** Says that a grade was set by hand, why, and what the flags alone give. */
export function ByHand({ override }: { readonly override: Overridden | null }) {
  if (override === null) return null;
  const { computed, reason } = override;
  return (
    <p className="by-hand" data-testid="by-hand">
      <strong>Set by hand.</strong> {reason}{' '}
      <span className="soft">
        By the flags alone: {computed.kind === 'none' ? 'no grade' : `${computed.mark} ${points(computed.score)}`}.
      </span>
    </p>
  );
}
