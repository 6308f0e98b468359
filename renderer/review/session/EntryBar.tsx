import { Pencil } from 'lucide-react';
import { useState } from 'react';
import { type View, views } from '../../../engine/exercises/exercise.ts';
import type { SearchedCatalogue } from '../../../engine/exercises/searchExercises.ts';
import { type Plan, type PlannedSet, runsOfSets } from '../../../engine/review/plan.ts';
import type { Clip, Entry } from '../../../engine/review/review.ts';
import { capitalized } from '../../base/capitalized.ts';
import { ExercisePicker } from '../../base/ExercisePicker.tsx';
import { NumberField } from '../../base/fields.tsx';
import { loadWords } from '../../base/figures.ts';
import { mutate } from '../../bridge/mutate.ts';
import { PlanDialog } from './PlanDialog.tsx';

type EntryBarProps = {
  readonly entry: Entry;
  readonly clip: Clip;
  readonly catalogue: SearchedCatalogue;
  readonly units: 'kg' | 'lb';
};

/** What is judged: exercise, plan, and how the clip was filmed. */
export function EntryBar({ entry, clip, catalogue, units }: EntryBarProps) {
  const [planning, setPlanning] = useState(false);
  const setView = (value: string): void => {
    const view: View | null = views.find((known) => known === value) ?? null;
    void mutate('clips.update', { clipId: clip.id, change: { view } });
  };
  return (
    <fieldset className="entry-bar" aria-label="Exercise">
      <ExercisePicker
        layout="inline"
        catalogue={catalogue}
        chosen={entry.exercise}
        onChoose={(exercise) => void mutate('entries.update', { entryId: entry.id, exercise })}
      />
      <label className="field-inline">
        <span>View</span>
        <select value={clip.view ?? ''} onChange={(event) => setView(event.target.value)}>
          <option value="">not stated</option>
          {views.map((view) => (
            <option key={view} value={view}>
              {capitalized(view)}
            </option>
          ))}
        </select>
      </label>
      <SlowMotionField clip={clip} />
      <span className="plan-line">
        <span className="field-name">Plan</span>
        <span data-testid="plan-line">{entry.plan === undefined ? 'none' : planWords(entry.plan, units)}</span>
        <button type="button" className="icon-button" aria-label="Edit the plan" onClick={() => setPlanning(true)}>
          <Pencil aria-hidden="true" />
        </button>
      </span>
      {planning && <PlanDialog entry={entry} onClose={() => setPlanning(false)} />}
    </fieldset>
  );
}

/** A plan in one line: "3 × 8, 80 kg, tempo 3-1-X-0, 2 in reserve". */
export const planWords = (plan: Plan, units: 'kg' | 'lb'): string =>
  runsOfSets(plan)
    .map(({ count, set }) => runWords(count, set, units))
    .join('; ');

function runWords(count: number, { reps, loadKg, tempo, repsInReserve }: PlannedSet, units: 'kg' | 'lb'): string {
  return [
    `${count} × ${reps}`,
    loadKg === undefined ? '' : loadWords(loadKg, units),
    tempo === undefined ? '' : `tempo ${tempo}`,
    repsInReserve === undefined ? '' : `${repsInReserve} in reserve`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}

/** How many times slower than the lift the clip plays: 1 for usual footage. */
export function SlowMotionField({ clip }: { readonly clip: Clip }) {
  return (
    <NumberField
      label="Slow motion ×"
      title="Capture rate divided by playback rate: 8 for 240 frames a second stored as 30"
      shown={String(clip.realTimeFactor)}
      accepts={(value) => value >= 0.01 && value <= 100}
      onSave={(realTimeFactor) => {
        if (realTimeFactor !== clip.realTimeFactor) {
          void mutate('clips.update', { clipId: clip.id, change: { realTimeFactor } });
        }
      }}
    />
  );
}
