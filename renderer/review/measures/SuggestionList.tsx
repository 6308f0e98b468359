import { useEffect, useRef } from 'react';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { Criterion } from '../../../engine/rubric/rubric.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { sayMeasuring } from '../../../engine/wording/sayMeasuring.ts';
import { Strokes } from '../../base/Strokes.tsx';
import type { ClipMeasures } from '../../state/clipState.ts';
import { ReviewButton, useReview } from '../commands/ReviewDeskProvider.tsx';
import { dismiss, nextSuggestion } from '../commands/suggestions.ts';
import { suggestionState } from '../state/panelState.ts';
import { SuggestionCard } from './SuggestionCard.tsx';

type SuggestionListProps = {
  readonly measures: ClipMeasures;
  readonly clip: Clip;
  readonly exercise: Exercise | null;
  readonly criteria: readonly Criterion[];
  readonly table: FrameTable;
};

/** What measuring proposes: accepted it becomes a flag, dismissed it is not proposed again. */
export function SuggestionList({ measures, clip, exercise, criteria, table }: SuggestionListProps) {
  const context = useReview();
  const { suggestions, dismissed } = measures;
  const chosenId = suggestionState((state) => state.chosenId);
  const list = useRef<HTMLUListElement>(null);
  useEffect(() => {
    if (chosenId !== null) list.current?.querySelector('[data-chosen=true]')?.scrollIntoView({ block: 'nearest' });
  }, [chosenId]);
  const nameOf = ({ criterion, fault }: Suggestion): string => {
    const judged = criteria.find(({ id }) => id === criterion)?.name ?? criterion;
    const missed = exercise?.faults.find(({ id }) => id === fault)?.name;
    return missed === undefined ? judged : `${judged}: ${missed}`;
  };
  return (
    <section className="suggestions" aria-label="Suggestions">
      <header>
        <h2>Suggestions ({suggestions.length})</h2>
        {suggestions.length > 0 && <ReviewButton command={nextSuggestion} className="quiet-button" />}
      </header>
      {suggestions.length === 0 && (
        <p className="soft">No measure is outside of what is asked by more than its uncertainty, or all is answered.</p>
      )}
      <ul ref={list}>
        {suggestions.map((suggestion) => (
          <li key={suggestion.id}>
            <SuggestionCard
              suggestion={suggestion}
              name={nameOf(suggestion)}
              chosen={suggestion.id === chosenId ? 'chosen' : 'not chosen'}
              clip={clip}
              measures={measures}
              table={table}
            />
          </li>
        ))}
      </ul>
      {dismissed.length > 0 && (
        <details className="dismissed">
          <summary>Dismissed ({dismissed.length})</summary>
          <ul>
            {dismissed.map((suggestion) => (
              <li key={suggestion.id}>
                <Strokes severity={suggestion.severity} named="elsewhere" />
                <span>
                  <strong>{nameOf(suggestion)}</strong>{' '}
                  <span className="soft">{sayMeasuring(suggestion.message, 'en')}</span>
                </span>
                <button
                  type="button"
                  aria-label={`Bring back: ${nameOf(suggestion)}`}
                  onClick={() => void dismiss(context, suggestion, 'back')}
                >
                  Bring back
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
