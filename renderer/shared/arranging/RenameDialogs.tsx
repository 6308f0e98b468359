import { useState } from 'react';
import type { SessionSummary } from '../../../electron/contract/desk.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { Field } from '../../base/fields.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { sayArranging } from '../../words/sayArranging.ts';

/** The title of a session; it may have none. */
export function RenameSessionDialog({
  session,
  onClose,
}: {
  readonly session: SessionSummary;
  readonly onClose: () => void;
}) {
  const [title, setTitle] = useState(session.title);
  const save = async (): Promise<void> => {
    if ((await mutate('sessions.rename', { sessionId: session.id, title })) !== null) onClose();
  };
  return (
    <FormDialog title={sayArranging('renameSession')} doing={sayArranging('rename')} onDone={save} onClose={onClose}>
      <Field label={sayArranging('title')}>
        <input type="text" maxLength={200} value={title} onChange={(event) => setTitle(event.target.value)} />
      </Field>
    </FormDialog>
  );
}

/** The name of a clip: at first its file's. */
export function RenameClipDialog({ clip, onClose }: { readonly clip: Clip; readonly onClose: () => void }) {
  const [name, setName] = useState(clip.name);
  const save = async (): Promise<void> => {
    if ((await mutate('clips.update', { clipId: clip.id, change: { name } })) !== null) onClose();
  };
  return (
    <FormDialog title={sayArranging('renameClip')} doing={sayArranging('rename')} onDone={save} onClose={onClose}>
      <Field label={sayArranging('clipName')}>
        <input type="text" required maxLength={200} value={name} onChange={(event) => setName(event.target.value)} />
      </Field>
    </FormDialog>
  );
}
