import { useState } from 'react';
import type { EntryGrade } from '../../engine/grading/grade.ts';
import { act } from '../bridge/act.ts';
import { ByHand } from '../parts/ByHand.tsx';
import { GradeByHandDialog } from './GradeByHandDialog.tsx';

type GradeByHandProps = {
  readonly sessionId: string;
  readonly entryId: string | null;
  readonly of: string;
  readonly grade: Pick<EntryGrade, 'state' | 'override'>;
};

/** A grade set by hand with its reason; or the way to set one. */
export function GradeByHand({ sessionId, entryId, of, grade }: GradeByHandProps) {
  const [dialog, setDialog] = useState<'open' | 'closed'>('closed');
  const { state, override } = grade;
  const doing = override === null ? 'Set by hand' : 'Change';
  return (
    <div className="grade-by-hand">
      <ByHand override={override} />
      <button
        type="button"
        className="quiet-button"
        aria-label={`${doing}: grade of ${of}`}
        onClick={() => setDialog('open')}
      >
        {doing}
      </button>
      {override !== null && (
        <button
          type="button"
          className="quiet-button"
          aria-label={`Take back: grade of ${of} set by hand`}
          onClick={() => void act('grades.override', { sessionId, entryId, override: null })}
        >
          Take back
        </button>
      )}
      {dialog === 'open' && (
        <GradeByHandDialog
          sessionId={sessionId}
          entryId={entryId}
          of={of}
          state={state}
          override={override}
          onClose={() => setDialog('closed')}
        />
      )}
    </div>
  );
}
