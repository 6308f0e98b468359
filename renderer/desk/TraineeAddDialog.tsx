import { useState } from 'react';
import { nameModeSchema } from '../../electron/contract/shapes.ts';
import { type Goal, goals } from '../../engine/exercises/exercise.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { Field } from '../base/fields.tsx';
import { NameModeOptions } from '../base/NameModeOptions.tsx';
import { mutate } from '../bridge/mutate.ts';

const goalWords: Readonly<Record<Goal, string>> = { growth: 'Muscle growth', strength: 'Strength', skill: 'Skill' };

/** Who lifts, and what for. */
export function TraineeAddDialog({ onClose }: { readonly onClose: () => void }) {
  const [name, setName] = useState('');
  const [goal, setGoal] = useState<Goal>('growth');
  const [experience, setExperience] = useState<'new' | 'experienced'>('experienced');
  const [units, setUnits] = useState<'kg' | 'lb'>('kg');
  const [age, setAge] = useState<'adult' | 'minor'>('adult');
  const [names, setNames] = useState<NameMode>('full');
  const add = async (): Promise<void> => {
    const added = await mutate('trainees.add', { name, goal, experience, units, minor: age === 'minor', names });
    if (added !== null) onClose();
  };
  return (
    <FormDialog title="Add a trainee" doing="Add trainee" onDone={add} onClose={onClose}>
      <Field label="Name">
        <input type="text" required maxLength={200} value={name} onChange={(e) => setName(e.target.value)} />
      </Field>
      <Field label="Goal">
        <select value={goal} onChange={(e) => setGoal(goals.find((known) => known === e.target.value) ?? 'growth')}>
          {goals.map((known) => (
            <option key={known} value={known}>
              {goalWords[known]}
            </option>
          ))}
        </select>
      </Field>
      <Field label="Experience">
        <select value={experience} onChange={(e) => setExperience(e.target.value === 'new' ? 'new' : 'experienced')}>
          <option value="experienced">Experienced</option>
          <option value="new">New to lifting</option>
        </select>
      </Field>
      <Field label="Units">
        <select value={units} onChange={(e) => setUnits(e.target.value === 'lb' ? 'lb' : 'kg')}>
          <option value="kg">Kilograms</option>
          <option value="lb">Pounds</option>
        </select>
      </Field>
      <Field label="Age">
        <select value={age} onChange={(e) => setAge(e.target.value === 'minor' ? 'minor' : 'adult')}>
          <option value="adult">Adult</option>
          <option value="minor">Minor: cautions for young lifters apply</option>
        </select>
      </Field>
      <Field label="Named in what leaves the desk">
        <select
          value={names}
          onChange={(e) => setNames(nameModeSchema.options.find((mode) => mode === e.target.value) ?? 'full')}
        >
          <NameModeOptions />
        </select>
      </Field>
    </FormDialog>
  );
}
