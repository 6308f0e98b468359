import { useState } from 'react';
import type { Overridden } from '../../engine/grading/grade.ts';
import type { Override } from '../../engine/review/review.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { Field } from '../base/fields.tsx';
import { mutate } from '../bridge/mutate.ts';
import { ByHand } from '../grade/GradeParts.tsx';
import { reviewState } from '../state/reviewState.ts';
import { sayGradeTree } from '../words/sayGradeTree.ts';

type GradeByHandProps = {
  readonly sessionId: string;
  readonly entryId: string | null;
  readonly of: string;
  /** What the coach set, before a stop flag's cap. */
  readonly set: Override | null;
  readonly override: Overridden | null;
};

/** A grade that was set by hand, with its reason and buttons to change it; or a button to set one. */
export function GradeByHand({ sessionId, entryId, of, set, override }: GradeByHandProps) {
  const readOnly = reviewState((state) => state.data?.readOnly === true);
  const [dialog, setDialog] = useState<'open' | 'closed'>('closed');
  if (readOnly) return <ByHand override={override} />;
  const doing = sayGradeTree(override === null ? 'setByHand' : 'change');
  return (
    <div className="grade-by-hand">
      <ByHand override={override} />
      <button
        type="button"
        className="quiet-button"
        aria-label={sayGradeTree('changeOf', { action: doing, name: of })}
        onClick={() => setDialog('open')}
      >
        {doing}
      </button>
      {override !== null && (
        <button
          type="button"
          className="quiet-button"
          aria-label={sayGradeTree('changeOf', { action: sayGradeTree('useComputed'), name: of })}
          onClick={() => void mutate('grades.override', { sessionId, entryId, override: null })}
        >
          {sayGradeTree('useComputed')}
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

type GradeByHandDialogProps = {
  readonly sessionId: string;
  /** null = the session's own grade. */
  readonly entryId: string | null;
  readonly of: string;
  readonly set: Override | null;
  readonly onClose: () => void;
};

/** Sets a grade by hand, with the reason that will stand beside it. */
function GradeByHandDialog({ sessionId, entryId, of, set, onClose }: GradeByHandDialogProps) {
  const [score, setScore] = useState(set === null ? '' : String(set.score));
  const [reason, setReason] = useState(set?.reason ?? '');
  const [wrong, setWrong] = useState('');
  const save = async (): Promise<void> => {
    const points = Number(score.trim().replace(',', '.'));
    if (score.trim() === '' || !(points >= 0 && points <= 100)) return setWrong(sayGradeTree('givePoints'));
    if (reason.trim() === '') return setWrong(sayGradeTree('giveReason'));
    const done = await mutate('grades.override', { sessionId, entryId, override: { score: points, reason } });
    if (done !== null) onClose();
  };
  return (
    <FormDialog
      title={sayGradeTree('byHandTitle', { name: of })}
      doing={sayGradeTree('setGrade')}
      onDone={save}
      onClose={onClose}
    >
      <Field label={sayGradeTree('pointsField')}>
        <input type="text" inputMode="decimal" value={score} onChange={(event) => setScore(event.target.value)} />
      </Field>
      <Field label={sayGradeTree('why')}>
        <textarea rows={3} maxLength={500} value={reason} onChange={(event) => setReason(event.target.value)} />
      </Field>
      <p className="soft">{sayGradeTree('byHandWords')}</p>
      {wrong !== '' && <p role="alert">{wrong}</p>}
    </FormDialog>
  );
}
