import { Copy, Plus, X } from 'lucide-react';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { LoadUnits } from '../../../engine/review/load.ts';
import { sayPlan } from '../../words/sayPlan.ts';
import { asAlike, mostSets, type PlanField, type SetFields } from './planForm.ts';
import { LoadInput, type PartProps, PlanInput, TempoInput } from './planInputs.tsx';

/** Each set in a row of its own. */
export function ListedSets({ form, units, wrong, alertId, onChange }: PartProps<'listed'>) {
  const { rows } = form;
  const body = useRef<HTMLTableSectionElement>(null);
  const [focused, setFocused] = useState<{ readonly row: number } | null>({ row: 0 });
  useEffect(() => {
    if (focused !== null) body.current?.querySelectorAll('tr')[focused.row]?.querySelector('input')?.focus();
  }, [focused]);
  const put = (next: readonly SetFields[], row: number): void => {
    onChange({ kind: 'listed', rows: next });
    setFocused({ row });
  };
  const copy = (index: number): void => {
    const source = rows[index];
    if (source !== undefined) put(rows.toSpliced(index + 1, 0, source), index + 1);
  };
  const setTo = (index: number, part: Partial<SetFields>): void =>
    onChange({ kind: 'listed', rows: rows.map((set, at) => (at === index ? { ...set, ...part } : set)) });
  const isFull = rows.length >= mostSets;
  return (
    <>
      <table className="plan-sets" aria-label={sayPlan('setsTable')}>
        <thead>
          <tr>
            <th scope="col">{sayPlan('set')}</th>
            <th scope="col">{sayPlan('reps')}</th>
            <th scope="col">{sayPlan('load', { units })}</th>
            <th scope="col">{sayPlan('bodyWeight')}</th>
            <th scope="col">{sayPlan('tempo')}</th>
            <th scope="col">{sayPlan('inReserve')}</th>
            <td />
          </tr>
        </thead>
        <tbody ref={body}>
          {rows.map((set, index) => (
            <SetRow
              // biome-ignore lint/suspicious/noArrayIndexKey: a set is its place in the plan
              key={index}
              number={index + 1}
              set={set}
              units={units}
              wrong={wrong?.row === index ? wrong.field : null}
              alertId={alertId}
              onChange={(part) => setTo(index, part)}
              onCopy={isFull ? null : () => copy(index)}
              onRemove={
                rows.length === 1 ? null : () => put(rows.toSpliced(index, 1), Math.min(index, rows.length - 2))
              }
            />
          ))}
        </tbody>
      </table>
      <p className="plan-actions">
        <button type="button" className="quiet-button" disabled={isFull} onClick={() => copy(rows.length - 1)}>
          <Plus aria-hidden="true" /> {sayPlan('addSet')}
        </button>
        <button type="button" className="quiet-button" onClick={() => onChange(asAlike(form))}>
          {sayPlan('allLikeFirst')}
        </button>
      </p>
    </>
  );
}

type SetRowProps = {
  readonly number: number;
  readonly set: SetFields;
  readonly units: LoadUnits;
  readonly wrong: PlanField | null;
  readonly alertId: string;
  readonly onChange: (part: Partial<SetFields>) => void;
  /** Null where no further set can be added. */
  readonly onCopy: (() => void) | null;
  /** Null for the only set. */
  readonly onRemove: (() => void) | null;
};

function SetRow({ number, set, units, wrong, alertId, onChange, onCopy, onRemove }: SetRowProps) {
  const typed = (field: PlanField, name: string) => ({
    name: sayPlan('ofSet', { name, set: number }),
    invalid: wrong === field,
    alertId,
  });
  return (
    <tr>
      <th scope="row">{number}</th>
      <td>
        <PlanInput {...typed('reps', sayPlan('reps'))} value={set.reps} onChange={(reps) => onChange({ reps })} />
      </td>
      <td>
        <LoadInput {...typed('load', sayPlan('load', { units }))} set={set} onChange={onChange} />
      </td>
      <td>
        <input
          type="checkbox"
          aria-label={sayPlan('ofSet', { name: sayPlan('bodyWeight'), set: number })}
          checked={set.bodyWeight}
          onChange={(event) => onChange({ bodyWeight: event.target.checked })}
        />
      </td>
      <td>
        <TempoInput {...typed('tempo', sayPlan('tempo'))} value={set.tempo} onChange={(tempo) => onChange({ tempo })} />
      </td>
      <td>
        <PlanInput
          {...typed('repsInReserve', sayPlan('repsInReserve'))}
          value={set.repsInReserve}
          onChange={(repsInReserve) => onChange({ repsInReserve })}
        />
      </td>
      <td>
        <RowButton label={sayPlan('copySet', { set: number })} onClick={onCopy}>
          <Copy aria-hidden="true" />
        </RowButton>
        <RowButton label={sayPlan('removeSet', { set: number })} onClick={onRemove}>
          <X aria-hidden="true" />
        </RowButton>
      </td>
    </tr>
  );
}

type RowButtonProps = {
  readonly label: string;
  readonly onClick: (() => void) | null;
  readonly children: ReactNode;
};

function RowButton({ label, onClick, children }: RowButtonProps) {
  return (
    <button
      type="button"
      className="icon-button"
      aria-label={label}
      title={label}
      disabled={onClick === null}
      onClick={() => onClick?.()}
    >
      {children}
    </button>
  );
}
