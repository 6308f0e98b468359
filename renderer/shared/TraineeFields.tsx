import type { Trainee } from '../../electron/contract/trainees.ts';
import type { Equipment } from '../../engine/exercises/equipment.ts';
import { goals } from '../../engine/exercises/exercise.ts';
import { EquipmentField } from '../base/EquipmentField.tsx';
import { Field } from '../base/fields.tsx';
import { sayTrainee } from '../words/sayTrainee.ts';

/** What is known of a trainee beside the name; null where no equipment is stated. */
export type TraineeFacts = Pick<Trainee, 'goal' | 'experience' | 'units' | 'minor'> & {
  readonly equipment: Equipment | null;
};

/** What a trainee is taken to be until somebody says otherwise. */
export const usualFacts: TraineeFacts = {
  goal: 'growth',
  experience: 'experienced',
  units: 'kg',
  minor: false,
  equipment: null,
};

/** What a coach notes of a trainee for themselves. */
export function TraineeNotesField({
  notes,
  onChange,
}: {
  readonly notes: string;
  readonly onChange: (notes: string) => void;
}) {
  return (
    <Field label={sayTrainee('notes')}>
      <textarea maxLength={2000} rows={3} value={notes} onChange={(event) => onChange(event.target.value)} />
      <span className="soft">{sayTrainee('notesStay')}</span>
    </Field>
  );
}

type TraineeFieldsProps = { readonly facts: TraineeFacts; readonly onChange: (change: Partial<TraineeFacts>) => void };

/** The fields of what is known of a trainee. */
export function TraineeFields({ facts, onChange }: TraineeFieldsProps) {
  return (
    <>
      <Field label={sayTrainee('goal')}>
        <select
          value={facts.goal}
          onChange={(e) => onChange({ goal: goals.find((known) => known === e.target.value) ?? 'growth' })}
        >
          {goals.map((known) => (
            <option key={known} value={known}>
              {sayTrainee(known)}
            </option>
          ))}
        </select>
      </Field>
      <Field label={sayTrainee('experience')}>
        <select
          value={facts.experience}
          onChange={(e) => onChange({ experience: e.target.value === 'new' ? 'new' : 'experienced' })}
        >
          <option value="experienced">{sayTrainee('experienced')}</option>
          <option value="new">{sayTrainee('new')}</option>
        </select>
      </Field>
      <Field label={sayTrainee('units')}>
        <select value={facts.units} onChange={(e) => onChange({ units: e.target.value === 'lb' ? 'lb' : 'kg' })}>
          <option value="kg">{sayTrainee('kilograms')}</option>
          <option value="lb">{sayTrainee('pounds')}</option>
        </select>
      </Field>
      <Field label={sayTrainee('age')}>
        <select
          value={facts.minor ? 'minor' : 'adult'}
          onChange={(e) => onChange({ minor: e.target.value === 'minor' })}
        >
          <option value="adult">{sayTrainee('adult')}</option>
          <option value="minor">{sayTrainee('minor')}</option>
        </select>
      </Field>
      <EquipmentField
        label={sayTrainee('equipment')}
        unstated={sayTrainee('equipmentNotStated')}
        value={facts.equipment}
        onChange={(equipment) => onChange({ equipment })}
      />
    </>
  );
}
