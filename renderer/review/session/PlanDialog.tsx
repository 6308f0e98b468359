import { useState } from 'react';
import type { Entry } from '../../../engine/review/review.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { Field } from '../../base/fields.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { fieldsOfPlan, planOfFields } from './planForm.ts';

const labels = {
  sets: 'Sets',
  reps: 'Reps in a set',
  loadKg: 'Load in kg',
  tempo: 'Tempo: eccentric - long pause - concentric - short pause',
  repsInReserve: 'Reps in reserve',
} as const;
const order = ['sets', 'reps', 'loadKg', 'tempo', 'repsInReserve'] as const;

/** What was planned for the exercise; all fields empty = no plan. */
export function PlanDialog({ entry, onClose }: { readonly entry: Entry; readonly onClose: () => void }) {
  const [fields, setFields] = useState(() => fieldsOfPlan(entry.plan));
  const [wrong, setWrong] = useState('');
  const save = async (): Promise<void> => {
    const read = planOfFields(fields);
    if ('wrong' in read) return setWrong(read.wrong);
    if ((await mutate('entries.update', { entryId: entry.id, plan: read.plan })) !== null) onClose();
  };
  return (
    <FormDialog title="Plan" doing="Save plan" onDone={save} onClose={onClose}>
      {order.map((name) => (
        <Field key={name} label={labels[name]}>
          <input
            type="text"
            inputMode={name === 'tempo' ? 'text' : 'decimal'}
            placeholder={name === 'tempo' ? '3-1-X-0' : ''}
            value={fields[name]}
            onChange={(event) => setFields({ ...fields, [name]: event.target.value })}
          />
        </Field>
      ))}
      {wrong !== '' && <p role="alert">{wrong}</p>}
    </FormDialog>
  );
}
