import type { Trainee } from '../../electron/contract/trainees.ts';
import type { Equipment } from '../../engine/exercises/equipment.ts';
import { type Goal, goals } from '../../engine/exercises/exercise.ts';
import { EquipmentField } from '../base/EquipmentField.tsx';
import { Field } from '../base/fields.tsx';

const goalWords: Readonly<Record<Goal, string>> = { growth: 'Muscle growth', strength: 'Strength', skill: 'Skill' };

/** What is known of a trainee beside the name; null where no equipment is stated. */
export type TraineeFacts = Pick<Trainee, 'goal' | 'experience' | 'units' | 'minor'> & {
  readonly equipment: Equipment | null;
};

type TraineeFieldsProps = { readonly facts: TraineeFacts; readonly onChange: (change: Partial<TraineeFacts>) => void };

/** The fields of what is known of a trainee. */
export function TraineeFields({ facts, onChange }: TraineeFieldsProps) {
  return (
    <>
      <Field label="Goal">
        <select
          value={facts.goal}
          onChange={(e) => onChange({ goal: goals.find((known) => known === e.target.value) ?? 'growth' })}
        >
          {goals.map((known) => (
            <option key={known} value={known}>
              {goalWords[known]}
            </option>
          ))}
        </select>
      </Field>
      <Field label="Experience">
        <select
          value={facts.experience}
          onChange={(e) => onChange({ experience: e.target.value === 'new' ? 'new' : 'experienced' })}
        >
          <option value="experienced">Experienced</option>
          <option value="new">New to lifting</option>
        </select>
      </Field>
      <Field label="Units">
        <select value={facts.units} onChange={(e) => onChange({ units: e.target.value === 'lb' ? 'lb' : 'kg' })}>
          <option value="kg">Kilograms</option>
          <option value="lb">Pounds</option>
        </select>
      </Field>
      <Field label="Age">
        <select
          value={facts.minor ? 'minor' : 'adult'}
          onChange={(e) => onChange({ minor: e.target.value === 'minor' })}
        >
          <option value="adult">Adult</option>
          <option value="minor">Minor: cautions for young lifters apply</option>
        </select>
      </Field>
      <EquipmentField
        label="Trains with"
        unstated="Not stated: everything is proposed"
        value={facts.equipment}
        onChange={(equipment) => onChange({ equipment })}
      />
    </>
  );
}
