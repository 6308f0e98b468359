import type { ReactNode } from 'react';

type TickProps = {
  readonly checked: boolean;
  readonly disabled?: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly children: ReactNode;
};

/** Something that is wanted or not, with its words beside it. */
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
