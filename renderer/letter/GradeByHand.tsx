import { useState } from 'react';
import type { Overridden } from '../../engine/grading/grade.ts';
import type { Override } from '../../engine/review/review.ts';
import { mutate } from '../bridge/mutate.ts';
import { ByHand } from '../grade/ByHand.tsx';
import { reviewState } from '../state/reviewState.ts';
import { GradeByHandDialog } from './GradeByHandDialog.tsx';

type GradeByHandProps = {
  readonly sessionId: string;
  readonly entryId: string | null;
  readonly of: string;
  /** What the coach set, before a stop flag's cap. */
  readonly set: Override | null;
  readonly override: Overridden | null;
};

/** A grade set by hand with its reason; or the way to set one. */
export function GradeByHand({ sessionId, entryId, of, set, override }: GradeByHandProps) {
  const readOnly = reviewState((state) => state.data?.readOnly === true);
  const [dialog, setDialog] = useState<'open' | 'closed'>('closed');
  if (readOnly) return <ByHand override={override} />;
  const doing = override === null ? 'Set grade by hand' : 'Change';
  return (
    <div className="grade-by-hand">
      <ByHand override={override} />
      <button type="button" className="quiet-button" aria-label={`${doing}: ${of}`} onClick={() => setDialog('open')}>
        {doing}
      </button>
      {override !== null && (
        <button
          type="button"
          className="quiet-button"
          aria-label={`Take back: grade of ${of} set by hand`}
          onClick={() => void mutate('grades.override', { sessionId, entryId, override: null })}
        >
          Take back
        </button>
      )}
      {dialog === 'open' && (
        <GradeByHandDialog
          sessionId={sessionId}
          entryId={entryId}
          of={of}
          set={set}
          onClose={() => setDialog('closed')}
        />
      )}
    </div>
  );
}
