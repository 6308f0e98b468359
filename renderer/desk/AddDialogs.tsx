import { useState } from 'react';
import { localDay } from '../../electron/contract/localDay.ts';
import { nameModeSchema } from '../../electron/contract/shapes.ts';
import type { Trainee } from '../../electron/contract/trainees.ts';
import { type Goal, goals } from '../../engine/exercises/exercise.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { FormDialog } from '../base/Dialog.tsx';
import { Field } from '../base/fields.tsx';
import { mutate } from '../bridge/mutate.ts';
import { NameModeOptions } from '../shared/NamesField.tsx';

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

type SessionAddDialogProps = { readonly trainees: readonly Trainee[]; readonly onClose: () => void };

/** A day's work of one trainee. */
export function SessionAddDialog({ trainees, onClose }: SessionAddDialogProps) {
  const [traineeId, setTraineeId] = useState(trainees[0]?.id ?? '');
  const [title, setTitle] = useState('');
  const [date, setDate] = useState(() => localDay(new Date()));
  const add = async (): Promise<void> => {
    if ((await mutate('sessions.add', { traineeId, title, date })) !== null) onClose();
  };
  return (
    <FormDialog title="Add a session" doing="Add session" onDone={add} onClose={onClose}>
      <Field label="Trainee">
        <select required value={traineeId} onChange={(e) => setTraineeId(e.target.value)}>
          {trainees.map((trainee) => (
            <option key={trainee.id} value={trainee.id}>
              {trainee.name}
            </option>
          ))}
        </select>
      </Field>
      <Field label="Date">
        <input type="date" required value={date} onChange={(e) => setDate(e.target.value)} />
      </Field>
      <Field label="Title">
        <input
          type="text"
          maxLength={200}
          placeholder="Lower body, week 3"
          value={title}
          onChange={(e) => setTitle(e.target.value)}
        />
      </Field>
    </FormDialog>
  );
}
