import { useLayoutEffect, useRef, useState } from 'react';

type CellTextProps = {
  readonly label: string;
  readonly typed: string;
  readonly kind: 'number' | 'date';
  readonly onDone: (text: string) => void;
  readonly onCancel: () => void;
};

/** A number or a day typed into a cell: Enter keeps it, Escape and leaving the field don't. */
export function CellText({ label, typed, kind, onDone, onCancel }: CellTextProps) {
  const [text, setText] = useState(typed);
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    input.current?.focus();
    if (kind === 'number') input.current?.setSelectionRange(typed.length, typed.length);
  }, [kind, typed.length]);
  return (
    <input
      ref={input}
      className="cell-text"
      type={kind === 'date' ? 'date' : 'text'}
      inputMode={kind === 'number' ? 'decimal' : undefined}
      aria-label={label}
      value={text}
      onBlur={onCancel}
      onChange={(event) => setText(event.target.value)}
      onKeyDown={(event) => {
        event.stopPropagation();
        if (event.key === 'Enter') onDone(text);
        else if (event.key === 'Escape') onCancel();
        else return;
        event.preventDefault();
      }}
    />
  );
}
