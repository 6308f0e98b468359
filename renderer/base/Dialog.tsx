import { X } from 'lucide-react';
import { type ReactNode, useId, useLayoutEffect, useRef } from 'react';
import { sayParts } from '../words/sayParts.ts';

type DialogProps = {
  readonly title: string;
  readonly onClose: () => void;
  readonly size?: 'usual' | 'wide';
  readonly children: ReactNode;
};

/** A modal dialog; mounted = open. The browser keeps the focus inside and gives it back. */
export function Dialog({ title, onClose, size = 'usual', children }: DialogProps) {
  const element = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  // Closed while it still stands in the page: only then the browser gives the focus back.
  useLayoutEffect(() => {
    const dialog = element.current;
    if (dialog !== null && !dialog.open) {
      dialog.showModal();
      dialog.querySelector<HTMLElement>('form :is(input, select, textarea)')?.focus();
    }
    return () => dialog?.close();
  }, []);
  return (
    <dialog
      ref={element}
      className={`dialog dialog-${size}`}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <header className="dialog-head">
        <h2 id={titleId}>{title}</h2>
        <button type="button" className="icon-button" aria-label={sayParts('close')} onClick={onClose}>
          <X aria-hidden="true" />
        </button>
      </header>
      {children}
    </dialog>
  );
}

type FormDialogProps = {
  readonly title: string;
  /** What the button that ends it says: "Add session". */
  readonly doing: string;
  readonly ready?: 'ready' | 'waiting';
  readonly size?: 'usual' | 'wide';
  readonly onDone: () => Promise<void>;
  readonly onClose: () => void;
  readonly children: ReactNode;
};

/** A dialog that asks for a few things and then does one. */
export function FormDialog({
  title,
  doing,
  ready = 'ready',
  size = 'usual',
  onDone,
  onClose,
  children,
}: FormDialogProps) {
  return (
    <Dialog title={title} onClose={onClose} size={size}>
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
            {sayParts('cancel')}
          </button>
          <button type="submit" className="primary" disabled={ready === 'waiting'}>
            {doing}
          </button>
        </footer>
      </form>
    </Dialog>
  );
}
