import type { ReactNode } from 'react';
import { Dialog } from './Dialog.tsx';

type FormDialogProps = {
  readonly title: string;
  /** What the button that ends it says: "Add session". */
  readonly doing: string;
  readonly ready?: 'ready' | 'waiting';
  readonly onDone: () => Promise<void>;
  readonly onClose: () => void;
  readonly children: ReactNode;
};

/** A dialog that asks for a few things and then does one. */
export function FormDialog({ title, doing, ready = 'ready', onDone, onClose, children }: FormDialogProps) {
  return (
    <Dialog title={title} onClose={onClose}>
      <form
        className="form"
        onSubmit={(event) => {
          event.preventDefault();
          void onDone();
        }}
      >
        {children}
        <footer className="dialog-foot">
          <button type="button" onClick={onClose}>
            Cancel
          </button>
          <button type="submit" className="primary" disabled={ready === 'waiting'}>
            {doing}
          </button>
        </footer>
      </form>
    </Dialog>
  );
}
