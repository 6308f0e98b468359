import { type ReactNode, useEffect, useState } from 'react';

/** A label over its control. */
export function Field({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the control is the child
    <label className="field">
      <span>{label}</span>
      {children}
    </label>
  );
}

type TickProps = {
  readonly checked: boolean;
  readonly disabled?: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly children: ReactNode;
};

/** A checkbox with its label beside it. */
export function Tick({ checked, disabled = false, onChange, children }: TickProps) {
  return (
    <label className="tick">
      <input
        type="checkbox"
        checked={checked}
        disabled={disabled}
        onChange={(event) => onChange(event.target.checked)}
      />
      <span>{children}</span>
    </label>
  );
}

type NumberFieldProps = {
  readonly label: string;
  /** What the field is called where label and unit alone say too little: "for" "s". */
  readonly name?: string;
  /** The number as it is now, in words. */
  readonly shown: string;
  readonly unit?: string;
  readonly title?: string;
  readonly accepts: (value: number) => boolean;
  /** Called with an accepted number that is written differently from the one shown. */
  readonly onSave: (value: number) => void;
};

/** A number typed with a point or a comma, saved on Enter and on leaving the field; what isn't accepted goes back. */
export function NumberField({ label, name, shown, unit, title, accepts, onSave }: NumberFieldProps) {
  const [text, setText] = useState(shown);
  useEffect(() => setText(shown), [shown]);
  const save = (): void => {
    const value = Number(text.replace(',', '.'));
    if (!accepts(value)) setText(shown);
    else if (text !== shown) onSave(value);
  };
  return (
    <label className="field-inline" title={title}>
      <span>{label}</span>
      <input
        className="narrow"
        type="text"
        inputMode="decimal"
        aria-label={name}
        value={text}
        onChange={(event) => setText(event.target.value)}
        onBlur={save}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
        }}
      />
      {unit !== undefined && <span>{unit}</span>}
    </label>
  );
}
