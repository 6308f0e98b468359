import type { LoadUnits } from '../../../engine/review/load.ts';
import type { PlanForm, PlanTrouble, SetFields } from './planForm.ts';

type Kind<K extends PlanForm['kind']> = Extract<PlanForm, { readonly kind: K }>;
/** What each kind of form is shown with. */
export type PartProps<K extends PlanForm['kind']> = {
  readonly form: Kind<K>;
  readonly units: LoadUnits;
  readonly wrong: PlanTrouble | null;
  readonly alertId: string;
  readonly onChange: (form: PlanForm) => void;
};

type InputProps = {
  /** What a screen reader says, where no label stands over it. */
  readonly name?: string;
  readonly invalid: boolean;
  readonly alertId: string;
};
type TextProps = InputProps & { readonly value: string; readonly onChange: (text: string) => void };

/** What tells of a wrong field. */
const aria = ({ name, invalid, alertId }: InputProps) => ({
  ...(name !== undefined && { 'aria-label': name }),
  ...(invalid && { 'aria-invalid': true, 'aria-describedby': alertId }),
});

/** A figure of a plan as it is typed. */
export function PlanInput({ value, onChange, ...rest }: TextProps) {
  return (
    <input
      type="text"
      inputMode="decimal"
      {...aria(rest)}
      value={value}
      onChange={(event) => onChange(event.target.value)}
    />
  );
}

/** A tempo as it is typed. */
export function TempoInput({ value, onChange, ...rest }: TextProps) {
  return (
    <input
      type="text"
      placeholder="3-1-X-0"
      {...aria(rest)}
      value={value}
      onChange={(event) => onChange(event.target.value)}
    />
  );
}

type LoadInputProps = InputProps & {
  readonly set: SetFields;
  readonly onChange: (part: Partial<SetFields>) => void;
};

/** A load; body weight has none. */
export function LoadInput({ set, onChange, ...rest }: LoadInputProps) {
  return (
    <input
      type="text"
      inputMode="decimal"
      {...aria(rest)}
      disabled={set.bodyWeight}
      value={set.bodyWeight ? '' : set.load}
      onChange={(event) => onChange({ load: event.target.value })}
    />
  );
}
