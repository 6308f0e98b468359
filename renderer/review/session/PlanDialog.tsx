import { useId, useState } from 'react';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Entry, Review } from '../../../engine/review/review.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { Field, Tick } from '../../base/fields.tsx';
import { SessionCautions } from '../../base/SessionCautions.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { sayPlan } from '../../words/sayPlan.ts';
import { ListedSets } from './ListedSets.tsx';
import {
  asRows,
  formOfPlan,
  type PlanField,
  type PlanForm,
  type PlanTrouble,
  planOfForm,
  type SetFields,
} from './planForm.ts';
import { LoadInput, type PartProps, PlanInput, TempoInput } from './planInputs.tsx';

type PlanDialogProps = {
  readonly entry: Entry;
  readonly review: Review;
  readonly catalogue: Catalogue;
  readonly onClose: () => void;
};

/**
 * What was planned for the exercise, as equal sets or set by set, under the cautions that it calls for; all fields
 * empty = no plan.
 */
export function PlanDialog({ entry, review, catalogue, onClose }: PlanDialogProps) {
  const { units } = review.trainee;
  const [form, setForm] = useState(() => formOfPlan(entry.plan, units));
  const [wrong, setWrong] = useState<PlanTrouble | null>(null);
  const alertId = useId();
  const change = (next: PlanForm): void => {
    setForm(next);
    setWrong(null);
  };
  const save = async (): Promise<void> => {
    const read = planOfForm(form, units);
    if ('wrong' in read) return setWrong(read.wrong);
    if ((await mutate('entries.update', { entryId: entry.id, plan: read.plan })) !== null) onClose();
  };
  const parts = { units, wrong, alertId, onChange: change };
  return (
    <FormDialog
      title={sayPlan('plan')}
      doing={sayPlan('save')}
      size={form.kind === 'listed' ? 'wide' : 'usual'}
      onDone={save}
      onClose={onClose}
    >
      <SessionCautions review={{ ...review, entries: [entry] }} catalogue={catalogue} shown="folded" />
      {form.kind === 'alike' ? <AlikeSets form={form} {...parts} /> : <ListedSets form={form} {...parts} />}
      {wrong !== null && (
        <p role="alert" id={alertId}>
          {wrong.sentence}
        </p>
      )}
    </FormDialog>
  );
}

/** Equal sets: two figures are enough. */
function AlikeSets({ form, units, wrong, alertId, onChange }: PartProps<'alike'>) {
  const { set } = form;
  const setTo = (part: Partial<SetFields>): void => onChange({ ...form, set: { ...set, ...part } });
  const typed = (field: PlanField) => ({ invalid: wrong?.field === field, alertId });
  return (
    <>
      <div className="field-row plan-figures">
        <Field label={sayPlan('sets')}>
          <PlanInput {...typed('sets')} value={form.sets} onChange={(sets) => onChange({ ...form, sets })} />
        </Field>
        <Field label={sayPlan('repsPerSet')}>
          <PlanInput {...typed('reps')} value={set.reps} onChange={(reps) => setTo({ reps })} />
        </Field>
        <Field label={sayPlan('load', { units })}>
          <LoadInput {...typed('load')} set={set} onChange={setTo} />
        </Field>
      </div>
      <Tick checked={set.bodyWeight} onChange={(bodyWeight) => setTo({ bodyWeight })}>
        {sayPlan('bodyWeight')}
      </Tick>
      <Field label={sayPlan('tempoOfPhases')}>
        <TempoInput {...typed('tempo')} value={set.tempo} onChange={(tempo) => setTo({ tempo })} />
      </Field>
      <Field label={sayPlan('repsInReserve')}>
        <PlanInput
          {...typed('repsInReserve')}
          value={set.repsInReserve}
          onChange={(repsInReserve) => setTo({ repsInReserve })}
        />
      </Field>
      <button type="button" className="quiet-button" onClick={() => onChange(asRows(form))}>
        {sayPlan('setBySet')}
      </button>
    </>
  );
}
