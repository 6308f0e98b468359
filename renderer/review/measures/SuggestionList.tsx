import { useEffect, useRef } from 'react';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { sayMeasuring } from '../../../engine/wording/sayMeasuring.ts';
import { Strokes } from '../../base/Strokes.tsx';
import type { ClipMeasures } from '../../state/clipState.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import { ReviewButton, useReview } from '../commands/ReviewDeskProvider.tsx';
import { dismiss, nextSuggestion } from '../commands/suggestions.ts';
import { suggestionState } from '../state/panelState.ts';
import { SuggestionCard } from './SuggestionCard.tsx';

/** Why nothing is suggested. */
function noneBecause({ measurement, dismissed }: ClipMeasures): 'nothingMeasured' | 'allAnswered' | 'noSuggestions' {
  if (measurement === null || measurement.reps.length === 0) return 'nothingMeasured';
  return dismissed.length > 0 ? 'allAnswered' : 'noSuggestions';
}

type SuggestionListProps = {
  readonly measures: ClipMeasures;
  readonly clip: Clip;
  readonly exercise: Exercise | null;
  readonly catalogue: Catalogue;
  readonly table: FrameTable;
};

/** What measuring proposes: accepted it becomes a flag, dismissed it is not proposed again. */
export function SuggestionList({ measures, clip, exercise, catalogue, table }: SuggestionListProps) {
  const context = useReview();
  const { suggestions, dismissed } = measures;
  const chosenId = suggestionState((state) => state.chosenId);
  const list = useRef<HTMLUListElement>(null);
  useEffect(() => {
    if (chosenId !== null) list.current?.querySelector('[data-chosen=true]')?.scrollIntoView({ block: 'nearest' });
  }, [chosenId]);
  const nameOf = ({ criterion, fault }: Suggestion): string => {
    const judged = criterionName(catalogue, criterion, exercise?.id);
    const missed = exercise?.faults.find(({ id }) => id === fault)?.name;
    return missed === undefined ? judged : sayMeasures('criterionAndFault', { criterion: judged, fault: missed });
  };
  return (
    <section className="suggestions" aria-label={sayMeasures('suggestions')}>
      <header>
        <h2>{sayMeasures('suggestionsCount', { count: suggestions.length })}</h2>
        {suggestions.length > 0 && <ReviewButton command={nextSuggestion} className="quiet-button" />}
      </header>
      {suggestions.length === 0 && <p className="soft">{sayMeasures(noneBecause(measures))}</p>}
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
          <summary>{sayMeasures('dismissedCount', { count: dismissed.length })}</summary>
          <ul>
            {dismissed.map((suggestion) => (
              <li key={suggestion.id}>
                <Strokes severity={suggestion.severity} named="elsewhere" />
                <span>
                  <strong>{nameOf(suggestion)}</strong>{' '}
                  <span className="soft">{sayMeasuring(suggestion.message, deskLanguage.getState().language)}</span>
                </span>
                <button
                  type="button"
                  aria-label={sayMeasures('bringBackNamed', { name: nameOf(suggestion) })}
                  onClick={() => void dismiss(context, suggestion, 'back')}
                >
                  {sayMeasures('bringBack')}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
