import { useState } from 'react';
import * as v from 'valibot';
import { equalPlanSchema, equalSets, type Plan } from '../../../engine/review/plan.ts';
import type { Entry } from '../../../engine/review/review.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { Field } from '../../base/fields.tsx';
import { mutate } from '../../bridge/mutate.ts';

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

type PlanFields = Readonly<Record<'sets' | 'reps' | 'loadKg' | 'tempo' | 'repsInReserve', string>>;

/** A plan as the form's texts; a missing figure is an empty field. */
export function fieldsOfPlan(plan: Plan | undefined): PlanFields {
  const [first] = plan?.sets ?? [];
  return {
    sets: plan === undefined ? '' : String(plan.sets.length),
    reps: first === undefined ? '' : String(first.reps),
    loadKg: first?.loadKg === undefined ? '' : String(first.loadKg),
    tempo: first?.tempo ?? '',
    repsInReserve: first?.repsInReserve === undefined ? '' : String(first.repsInReserve),
  };
}

const names: Readonly<Record<string, string>> = {
  sets: 'Sets are a whole number from 1 to 50',
  reps: 'Reps are a whole number from 1 to 500',
  loadKg: 'The load is a number of kilograms up to 1000',
  tempo: 'The tempo is four times in seconds, such as 3-1-X-0',
  repsInReserve: 'Reps in reserve are a number from 0 to 20',
};

const figure = (text: string): number | undefined => (text.trim() === '' ? undefined : Number(text.replace(',', '.')));

/** The plan of a filled-in form; null when all is empty; or the sentence that says which field is wrong. */
export function planOfFields(fields: PlanFields): { readonly plan: Plan | null } | { readonly wrong: string } {
  if (Object.values(fields).every((text) => text.trim() === '')) return { plan: null };
  const given = {
    sets: figure(fields.sets),
    reps: figure(fields.reps),
    loadKg: figure(fields.loadKg),
    tempo: fields.tempo.trim() === '' ? undefined : fields.tempo.trim().toUpperCase(),
    repsInReserve: figure(fields.repsInReserve),
  };
  const parsed = v.safeParse(
    equalPlanSchema,
    Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)),
  );
  if (parsed.success) return { plan: equalSets(parsed.output) };
  const field = String(parsed.issues[0].path?.[0]?.key ?? '');
  return { wrong: `${names[field] ?? 'The plan is not complete'}; nothing was changed.` };
}
