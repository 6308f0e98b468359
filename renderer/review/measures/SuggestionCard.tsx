import { useMemo } from 'react';
import type { RepMeasurement } from '../../../engine/motion/measurement.ts';
import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import type { Clip, Rep } from '../../../engine/review/review.ts';
import { severities } from '../../../engine/rubric/rubric.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { sayMeasuring } from '../../../engine/wording/sayMeasuring.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { KeyHint } from '../../commands/CommandButton.tsx';
import { clipClock } from '../../player/clipClock.ts';
import { repFrames } from '../../player/repFrames.ts';
import type { ClipMeasures } from '../../state/clipState.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import { saySeverity } from '../../words/saySeverity.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { accept, acceptSuggestion, dismiss, dismissSuggestion, visitSuggestion } from '../commands/suggestions.ts';
import { repsWords } from '../model/columns.ts';
import { frameAtSeconds, secondsOfFrame } from '../model/moments.ts';
import { suggestionState } from '../state/panelState.ts';

type SuggestionCardProps = {
  readonly suggestion: Suggestion;
  /** Criterion and fault. */
  readonly name: string;
  readonly chosen: 'chosen' | 'not chosen';
  readonly clip: Clip;
  readonly measures: ClipMeasures;
  readonly table: FrameTable;
};

/** One suggestion with its number; severity and reps can be changed before it becomes a flag. */
export function SuggestionCard({ suggestion, name, chosen, clip, measures, table }: SuggestionCardProps) {
  const context = useReview();
  const inHand = chosen === 'chosen';
  const changed = suggestionState();
  const proposed = useMemo(
    () => clipRepsOf(suggestion.reps, measures.measurement?.reps ?? [], clip.reps, table),
    [suggestion, measures, clip.reps, table],
  );
  const severity = (inHand ? changed.severity : null) ?? suggestion.severity;
  const reps = (inHand ? changed.reps : null) ?? proposed;
  const hold = (): void => suggestionState.getState().choose(suggestion.id);
  const toggle = (rep: number): void => {
    const next = reps.includes(rep) ? reps.filter((one) => one !== rep) : [...reps, rep].sort((a, b) => a - b);
    hold();
    if (next.length > 0) suggestionState.setState({ reps: next });
  };
  const time = clipClock(clip, table, frameAtSeconds(suggestion.atS, table));
  return (
    <article
      className="suggestion-card"
      aria-label={sayMeasures('suggestion', { name, severity: saySeverity(severity), reps: repsWords(reps) })}
      data-testid="suggestion"
      data-suggestion={suggestion.id}
      data-chosen={inHand}
    >
      <div className="flag-head">
        <Strokes severity={severity} named="elsewhere" />
        <select
          aria-label={sayFlags('severity')}
          className="plain-select"
          value={severity}
          onChange={(event) => {
            hold();
            suggestionState.setState({ severity: severities.find((known) => known === event.target.value) ?? null });
          }}
        >
          {severities.map((known) => (
            <option key={known} value={known}>
              {saySeverity(`${known}Title`)}
            </option>
          ))}
        </select>
        <strong>{name}</strong>
        <button type="button" className="time-button" onClick={() => visitSuggestion(context, suggestion)}>
          <span className="visually-hidden">{sayFlags('goTo')} </span>
          {time}
        </button>
      </div>
      <p>{sayMeasuring(suggestion.message, deskLanguage.getState().language)}</p>
      <div className="suggestion-foot">
        <fieldset className="flag-reps" aria-label={sayMeasures('repsOfSuggestion')}>
          {clip.reps.map(({ index }) => (
            <button
              key={index}
              type="button"
              className="chip"
              aria-label={sayFlags('rep', { rep: index })}
              aria-pressed={reps.includes(index)}
              onClick={() => toggle(index)}
            >
              {index}
            </button>
          ))}
        </fieldset>
        <button type="button" onClick={() => void accept(context, suggestion)}>
          {sayMeasures('accept')} {inHand && <KeyHint command={acceptSuggestion} />}
        </button>
        <button type="button" onClick={() => void dismiss(context, suggestion, 'aside')}>
          {sayMeasures('dismiss')} {inHand && <KeyHint command={dismissSuggestion} />}
        </button>
      </div>
    </article>
  );
}

/** The card's number for a measured rep: that of the marked rep it overlaps most; null for none. */
export function clipRepOf(measured: RepMeasurement, reps: readonly Rep[], table: FrameTable): number | null {
  let found: { readonly index: number; readonly sharedS: number } | null = null;
  for (const { index } of reps) {
    const frames = repFrames(reps, index, table);
    if (frames === null) continue;
    const [startS, endS] = [secondsOfFrame(frames.first, table), secondsOfFrame(frames.last, table)];
    const sharedS = Math.min(measured.endS, endS) - Math.max(measured.startS, startS);
    const shorterS = Math.max(1e-6, Math.min(measured.endS - measured.startS, endS - startS));
    if (sharedS / shorterS >= 0.5 && sharedS > (found?.sharedS ?? 0)) found = { index, sharedS };
  }
  return found?.index ?? null;
}

/** The card's numbers for measured reps, ascending; reps that match no marked rep are left out. */
export const clipRepsOf = (
  indices: readonly number[],
  measured: readonly RepMeasurement[],
  reps: readonly Rep[],
  table: FrameTable,
): readonly number[] =>
  indices
    .flatMap((index) => {
      const rep = measured.find((one) => one.index === index);
      return rep === undefined ? [] : (clipRepOf(rep, reps, table) ?? []);
    })
    .sort((a, b) => a - b);
