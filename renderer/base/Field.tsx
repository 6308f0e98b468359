import type { ReactNode } from 'react';

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
