import { useEffect, useId } from 'react';
import { type DraftField, draftKey, draftsState, saveDrafts, typeDraft } from '../../drafts/flagDrafts.ts';

type DraftTextProps = {
  readonly flagId: string;
  readonly field: DraftField;
  readonly label: string;
  readonly saved: string;
  readonly placeholder: string;
};

/** A text edited in place: saved after a short rest, on leaving it, and when it goes off screen. */
export function DraftText({ flagId, field, label, saved, placeholder }: DraftTextProps) {
  const draft = draftsState((state) => state.drafts[draftKey(flagId, field)]);
  const labelId = useId();
  useEffect(() => () => void saveDrafts(), []);
  return (
    <div className="draft-text">
      <span id={labelId} className="draft-label">
        {label}
      </span>
      <textarea
        id={`${field}-${flagId}`}
        aria-labelledby={labelId}
        rows={1}
        maxLength={2000}
        value={draft ?? saved}
        placeholder={placeholder}
        onChange={(event) => typeDraft(flagId, field, event.target.value)}
        onBlur={() => void saveDrafts()}
        onKeyDown={(event) => {
          if (event.key === 'Escape') event.currentTarget.blur();
        }}
      />
    </div>
  );
}
