import { useState } from 'react';
import type { Review } from '../../../engine/review/review.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { Field } from '../../base/fields.tsx';
import { mutate } from '../../bridge/mutate.ts';

type SessionDialogProps = { readonly sessionId: string; readonly review: Review; readonly onClose: () => void };

/** Title, date and what the trainee wrote with the clips. */
export function SessionDialog({ sessionId, review, onClose }: SessionDialogProps) {
  const { title, date, notes, painNote } = review.session;
  const [fields, setFields] = useState({ title, date, notes, painNote });
  const save = async (): Promise<void> => {
    if ((await mutate('sessions.update', { sessionId, ...fields })) !== null) onClose();
  };
  const set = (change: Partial<typeof fields>): void => setFields({ ...fields, ...change });
  return (
    <FormDialog title="Session" doing="Save" onDone={save} onClose={onClose}>
      <Field label="Title">
        <input type="text" maxLength={200} value={fields.title} onChange={(e) => set({ title: e.target.value })} />
      </Field>
      <Field label="Date">
        <input type="date" required value={fields.date} onChange={(e) => set({ date: e.target.value })} />
      </Field>
      <Field label="Notes from the trainee">
        <textarea rows={3} maxLength={2000} value={fields.notes} onChange={(e) => set({ notes: e.target.value })} />
      </Field>
      <Field label="Pain or injury, in the trainee’s words">
        <textarea
          rows={3}
          maxLength={2000}
          value={fields.painNote}
          onChange={(e) => set({ painNote: e.target.value })}
        />
      </Field>
    </FormDialog>
  );
}
