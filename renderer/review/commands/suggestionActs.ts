import type { Suggestion } from '../../../engine/motion/measurement.ts';
import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { measuresState } from '../../state/measuresState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { coverState } from '../state/coverState.ts';
import { clearBeside, panelState } from '../state/panelState.ts';
import { setUpState } from '../state/setUpState.ts';
import { suggestionState } from '../state/suggestionState.ts';
import { goToSeconds } from './measureActs.ts';

const suggestionsHere = (): readonly Suggestion[] => measuresState.getState().measures?.suggestions ?? [];

/** The suggestion that keys answer: the chosen one while it can be seen. Null: keys first have to go to one. */
function suggestionInHand(): Suggestion | null {
  const { chosenId } = suggestionState.getState();
  const free = setUpState.getState().settingUp === 'off' && coverState.getState().covering === 'off';
  const seen = panelState.getState().panel === 'measures' && free;
  return (seen ? suggestionsHere().find(({ id }) => id === chosenId) : undefined) ?? null;
}

/** Chooses a suggestion, shows it in the list, and its moment on the stage. */
export function visitSuggestion(suggestion: Suggestion): void {
  suggestionState.getState().choose(suggestion.id);
  clearBeside();
  panelState.getState().show('measures');
  goToSeconds(suggestion.atS);
}

/** Goes to the suggestion after the one in hand, or before it; round at the ends. */
export function changeSuggestion(direction: 'previous' | 'next'): void {
  const all = suggestionsHere();
  const { chosenId } = suggestionState.getState();
  const at = all.findIndex(({ id }) => id === chosenId);
  const step = direction === 'next' ? 1 : -1;
  const next = all[at === -1 ? 0 : (at + step + all.length) % all.length];
  if (next === undefined) statusState.getState().tell('There is no suggestion for this clip that waits for an answer.');
  else visitSuggestion(next);
}

/** The one to go on with when one was answered: that which follows it, else the one before. */
function chooseNeighbour(answered: Suggestion): void {
  const all = suggestionsHere();
  const at = all.findIndex(({ id }) => id === answered.id);
  suggestionState.getState().choose((all[at + 1] ?? all[at - 1])?.id ?? null);
}

/** Makes a suggestion a flag, with what the coach changed of it. */
export async function acceptSuggestion(suggestion: Suggestion): Promise<void> {
  const { clipId } = measuresState.getState();
  if (clipId === null) return;
  const { chosenId, weight, reps } = suggestionState.getState();
  const changed = chosenId === suggestion.id ? { weight, reps } : { weight: null, reps: null };
  const accepted = await mutate('suggestions.accept', {
    clipId,
    suggestionId: suggestion.id,
    change: {
      ...(changed.weight !== null && { weight: changed.weight }),
      ...(changed.reps !== null && { reps: [...changed.reps] }),
    },
  });
  if (accepted === null) return;
  chooseNeighbour(suggestion);
  await Promise.all([measuresState.getState().refresh(), reviewState.getState().refresh()]);
}

/** Puts a suggestion aside for good, or brings it back. */
export async function dismissSuggestion(suggestion: Suggestion, how: 'aside' | 'back'): Promise<void> {
  const { clipId } = measuresState.getState();
  if (clipId === null) return;
  const done = await mutate('suggestions.dismiss', {
    clipId,
    suggestionId: suggestion.id,
    dismissed: how === 'aside',
  });
  if (done === null) return;
  if (how === 'aside') chooseNeighbour(suggestion);
  await measuresState.getState().refresh();
}

/** Answers the suggestion in hand; goes to the next one where none is, so that nothing is answered unseen. */
export function answerByKey(answer: 'accept' | 'dismiss'): void {
  const suggestion = suggestionInHand();
  if (suggestion === null) changeSuggestion('next');
  else if (answer === 'accept') void acceptSuggestion(suggestion);
  else void dismissSuggestion(suggestion, 'aside');
}
