import { Pencil } from 'lucide-react';
import { useState } from 'react';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import { type View, views } from '../../../engine/exercises/exercise.ts';
import type { Clip, Entry, Review } from '../../../engine/review/review.ts';
import { sayView, sayViewName } from '../../../engine/wording/sayView.ts';
import { ExercisePicker } from '../../base/ExercisePicker.tsx';
import { NumberField } from '../../base/fields.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { measuresState } from '../../state/clipState.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayPlan } from '../../words/sayPlan.ts';
import { sayReviewHead } from '../../words/sayReviewHead.ts';
import { takeView } from '../commands/measuring.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';
import { PlanDialog } from './PlanDialog.tsx';
import { planWords } from './planWords.ts';

type EntryBarProps = {
  readonly entry: Entry;
  readonly clip: Clip;
  readonly catalogue: Catalogue;
  readonly review: Review;
};

/** What is judged: exercise, plan, and how the clip was filmed. */
export function EntryBar({ entry, clip, catalogue, review }: EntryBarProps) {
  const [planning, setPlanning] = useState(false);
  const language = deskLanguage((state) => state.language);
  const exercise = catalogue.exercises.find(({ id }) => id === entry.exercise);
  const setView = (value: string): void => {
    const view: View | null = views.find((known) => known === value) ?? null;
    void mutate('clips.update', { clipId: clip.id, change: { view } });
  };
  const plan = entry.plan === undefined ? sayPlan('none') : planWords(entry.plan, review.trainee.units, exercise);
  return (
    <fieldset className="entry-bar" aria-label={sayReviewHead('exercise')}>
      <ExercisePicker
        layout="inline"
        catalogue={catalogue}
        chosen={entry.exercise}
        onChoose={(exercise) => void mutate('entries.update', { entryId: entry.id, exercise })}
      />
      <label className="field-inline">
        <span>{sayReviewHead('view')}</span>
        <select value={clip.view ?? ''} onChange={(event) => setView(event.target.value)}>
          <option value="">{sayReviewHead('notStated')}</option>
          {views.map((view) => (
            <option key={view} value={view}>
              {sayViewName(view, language)}
            </option>
          ))}
        </select>
      </label>
      {clip.view === null && <OfferedView clipId={clip.id} />}
      <SlowMotionField clip={clip} />
      <span className="plan-line">
        <span className="field-name">{sayPlan('plan')}</span>
        <span data-testid="plan-line" title={plan}>
          {plan}
        </span>
        <button type="button" className="icon-button" aria-label={sayPlan('edit')} onClick={() => setPlanning(true)}>
          <Pencil aria-hidden="true" />
        </button>
      </span>
      {planning && (
        <PlanDialog entry={entry} review={review} catalogue={catalogue} onClose={() => setPlanning(false)} />
      )}
    </fieldset>
  );
}

/** The view that the joints show, for one click; nothing where they don't. */
function OfferedView({ clipId }: { readonly clipId: string }) {
  const read = measuresState((state) => (state.clipId === clipId ? (state.measures?.measurement?.view ?? null) : null));
  const language = deskLanguage((state) => state.language);
  return read === null ? null : (
    <ReviewButton command={takeView} words={sayReviewHead('useView', { view: sayView(read, language) })} />
  );
}

/** How many times slower than the lift the clip plays: 1 for usual footage. */
export function SlowMotionField({ clip }: { readonly clip: Clip }) {
  return (
    <NumberField
      label={sayReviewHead('slowMotion')}
      title={sayReviewHead('slowMotionHint')}
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
