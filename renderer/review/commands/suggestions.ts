import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import { mutate } from '../../bridge/mutate.ts';
import { type Availability, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { measuresState } from '../../state/clipState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { panelState, suggestionState } from '../state/panelState.ts';
import { coverState, setUpState } from '../state/pictureTools.ts';
import { goToSeconds, showPanel } from './measuring.ts';
import type { ReviewContext } from './reviewContext.ts';

const suggestionsOf = ({ measures }: ReviewContext): readonly Suggestion[] => measures?.suggestions ?? [];

/** The suggestion that keys answer: the chosen one while it can be seen. Null: keys first have to go to one. */
function suggestionInView(context: ReviewContext): Suggestion | null {
  const { chosenId } = suggestionState.getState();
  const free = setUpState.getState().settingUp === 'off' && coverState.getState().covering === 'off';
  const seen = panelState.getState().panel === 'measures' && free;
  return (seen ? suggestionsOf(context).find(({ id }) => id === chosenId) : undefined) ?? null;
}

/** Chooses a suggestion, shows it in the list, and its moment on the stage. */
export function visitSuggestion(context: ReviewContext, suggestion: Suggestion): void {
  suggestionState.getState().choose(suggestion.id);
  showPanel('measures');
  goToSeconds(context, suggestion.atS);
}

/** Goes to the suggestion after the chosen one, or before it; round at the ends. */
function changeSuggestion(context: ReviewContext, step: -1 | 1): void {
  const all = suggestionsOf(context);
  const { chosenId } = suggestionState.getState();
  const at = all.findIndex(({ id }) => id === chosenId);
  const next = all[at === -1 ? 0 : (at + step + all.length) % all.length];
  if (next !== undefined) visitSuggestion(context, next);
}

/** Chooses the one to go on with when one was answered: that which follows it, else the one before. */
function chooseNeighbour(context: ReviewContext, answered: Suggestion): void {
  const all = suggestionsOf(context);
  const at = all.findIndex(({ id }) => id === answered.id);
  suggestionState.getState().choose((all[at + 1] ?? all[at - 1])?.id ?? null);
}

/** Makes a suggestion a flag, with what the coach changed of it. */
export async function accept(context: ReviewContext, suggestion: Suggestion): Promise<void> {
  const { stage } = context;
  if (stage === null) return;
  const { chosenId, severity, reps } = suggestionState.getState();
  const changed = chosenId === suggestion.id ? { severity, reps } : { severity: null, reps: null };
  const accepted = await mutate('suggestions.accept', {
    clipId: stage.clip.id,
    suggestionId: suggestion.id,
    change: {
      ...(changed.severity !== null && { severity: changed.severity }),
      ...(changed.reps !== null && { reps: [...changed.reps] }),
    },
  });
  if (accepted === null) return;
  chooseNeighbour(context, suggestion);
  await Promise.all([measuresState.getState().refresh(), reviewState.getState().refresh()]);
}

/** Dismisses a suggestion for good, or brings it back. */
export async function dismiss(context: ReviewContext, suggestion: Suggestion, how: 'aside' | 'back'): Promise<void> {
  const { stage } = context;
  if (stage === null) return;
  const done = await mutate('suggestions.dismiss', {
    clipId: stage.clip.id,
    suggestionId: suggestion.id,
    dismissed: how === 'aside',
  });
  if (done === null) return;
  if (how === 'aside') chooseNeighbour(context, suggestion);
  await measuresState.getState().refresh();
}

const isProposed = (context: ReviewContext): Availability =>
  suggestionsOf(context).length === 0 ? unavailable(sayReasons('noSuggestion')) : available;

type Suggesting = Command<ReviewContext>;
const shared = { group: 'measuring', readOnly: 'refused', when: isProposed } as const;

/** Answers the suggestion in view; goes to the next one where none is, so that nothing is answered unseen. */
const answer =
  (answered: (context: ReviewContext, suggestion: Suggestion) => Promise<void>): Suggesting['run'] =>
  (context) => {
    const suggestion = suggestionInView(context);
    return suggestion === null ? changeSuggestion(context, 1) : answered(context, suggestion);
  };

export const nextSuggestion: Suggesting = {
  ...shared,
  ...named('nextSuggestion'),
  keys: ['.'],
  run: (context) => changeSuggestion(context, 1),
};

const previousSuggestion: Suggesting = {
  ...shared,
  ...named('previousSuggestion'),
  keys: [','],
  run: (context) => changeSuggestion(context, -1),
};

export const acceptSuggestion: Suggesting = {
  ...shared,
  ...named('acceptSuggestion'),
  keys: ['Y'],
  run: answer(accept),
};

export const dismissSuggestion: Suggesting = {
  ...shared,
  ...named('dismissSuggestion'),
  keys: ['Q'],
  run: answer((context, suggestion) => dismiss(context, suggestion, 'aside')),
};

/** Answering what measuring proposes. */
export const suggestionCommands: readonly Suggesting[] = [
  nextSuggestion,
  previousSuggestion,
  acceptSuggestion,
  dismissSuggestion,
];
