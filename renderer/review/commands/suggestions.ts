import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { type Availability, available, type Command, unavailable } from '../../commands/command.ts';
import { named } from '../../commands/named.ts';
import { repAtFrame } from '../../player/repFrames.ts';
import { measuresState } from '../../state/clipState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import { frameAtSeconds, secondsOfFrame } from '../model/moments.ts';
import { panelState, suggestionState } from '../state/panelState.ts';
import { coverState, setUpState } from '../state/pictureTools.ts';
import { playhead } from '../state/playerState.ts';
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

/** Chooses a suggestion, shows it in the list, its moment on the stage, and its cell on the card. */
export function visitSuggestion(context: ReviewContext, suggestion: Suggestion): void {
  suggestionState.getState().choose(suggestion.id);
  showPanel('measures');
  goToSeconds(context, suggestion.atS);
  const { stage, cursor } = context;
  if (stage === null || stage.tables === null) return;
  const { table } = stage.tables;
  const rep = repAtFrame(stage.clip.reps, frameAtSeconds(suggestion.atS, table), table);
  cursor.moveTo(suggestion.criterion, { clipId: stage.clip.id, rep: rep ?? 'set' });
}

/** How far from its moment a suggestion is still in sight: a coach steps to and fro while looking. Media seconds. */
const aroundS = 0.5;

/** Whether the moment of a suggestion stands on screen, or very nearly. */
function isSeen({ stage }: ReviewContext, suggestion: Suggestion): boolean {
  const { clipId, frame, settled } = playhead.getState();
  if (stage === null || stage.tables === null || clipId !== stage.clip.id || !settled) return false;
  return Math.abs(secondsOfFrame(frame, stage.tables.table) - suggestion.atS) <= aroundS;
}

/** Goes to the suggestion after the chosen one, or before it; round at the ends. */
function changeSuggestion(context: ReviewContext, step: -1 | 1): void {
  const all = suggestionsOf(context);
  const { chosenId } = suggestionState.getState();
  const at = all.findIndex(({ id }) => id === chosenId);
  const next = all[at === -1 ? 0 : (at + step + all.length) % all.length];
  if (next !== undefined) visitSuggestion(context, next);
}

/** The one to go on with when one was answered: that which follows it, else the one before. */
function neighbourOf(context: ReviewContext, answered: Suggestion): Suggestion | null {
  const all = suggestionsOf(context);
  const at = all.findIndex(({ id }) => id === answered.id);
  return all[at + 1] ?? all[at - 1] ?? null;
}

/** Goes on to a suggestion, if that is still open; says so where none is left. */
function goOnWith(context: ReviewContext, next: Suggestion | null): void {
  const open = suggestionsOf(context).find(({ id }) => id === next?.id) ?? suggestionsOf(context)[0];
  if (open !== undefined) return visitSuggestion(context, open);
  suggestionState.getState().choose(null);
  statusState.getState().say(sayMeasures('noneLeft'));
}

/**
 * Makes a suggestion a flag, with what the coach changed of it, and shows the next one. Where its moment is not on screen it is
 * shown first: nothing is accepted unseen.
 */
export async function accept(context: ReviewContext, suggestion: Suggestion): Promise<void> {
  const { stage } = context;
  if (stage === null) return;
  if (!isSeen(context, suggestion)) {
    visitSuggestion(context, suggestion);
    statusState.getState().say(sayMeasures('lookFirst'));
    return;
  }
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
  const next = neighbourOf(context, suggestion);
  await Promise.all([measuresState.getState().refresh(), reviewState.getState().refresh()]);
  goOnWith(context, next);
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
  const next = neighbourOf(context, suggestion);
  await measuresState.getState().refresh();
  if (how === 'aside') goOnWith(context, next);
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
