import type { Suggestion } from '../../../engine/motion/suggestion.ts';
import { sayMeasuring } from '../../../engine/wording/sayMeasuring.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { type ClipToMeasure, clipToMeasure } from '../measure/clipToMeasure.ts';
import { momentAt } from '../measure/measuredReps.ts';
import { measurementOfClip } from '../measure/measurementOfClip.ts';
import { repNumbers, suggestionsOf } from '../measure/suggestionsOf.ts';
import { actOnSession } from './acts.ts';
import { flagValues, type NewFlag, newFlag } from './flags.ts';
import type { Handler } from './handler.ts';

/** The flag stands on the frame nearest to the moment of the measure, and says the measure in its note. */
export const acceptSuggestion: Handler<'suggestions.accept'> = (context, { clipId, suggestionId, change }) => {
  const { asked, measurement, open, dismissed } = proposed(context, clipId);
  const suggestion = theOne([...open, ...dismissed], suggestionId);
  const { clip, source } = asked;
  if (!source || !measurement) throw gone();
  const put = newFlag(context, clip, {
    criterion: suggestion.criterion,
    fault: suggestion.fault,
    severity: change.severity ?? suggestion.severity,
    reps: change.reps ?? numbersOf(suggestion, repNumbers(asked, measurement)),
    frame: momentAt(suggestion.atS, source.table).frame,
    ...noteOf(suggestion, change.note),
    cue: '',
  });
  const key = { clip_id: clipId, suggestion_id: suggestionId };
  return actOnSession(context, clip.session_id, (changes) => {
    const flagId = put(changes);
    if (dismissed.includes(suggestion)) changes.remove('suggestion_answer', key);
    changes.insert('suggestion_answer', { ...key, answer: 'accepted', flag_id: flagId });
    return { name: { id: 'flagAdded', values: flagValues(changes.reading, flagId) }, value: { flagId } };
  });
};

export const dismissSuggestion: Handler<'suggestions.dismiss'> = (context, { clipId, suggestionId, ...asked }) => {
  const { open, dismissed, ...of } = proposed(context, clipId);
  const suggestion = theOne(asked.dismissed ? open : dismissed, suggestionId);
  const key = { clip_id: clipId, suggestion_id: suggestionId };
  return actOnSession(context, of.asked.clip.session_id, (changes) => {
    if (asked.dismissed) changes.insert('suggestion_answer', { ...key, answer: 'dismissed', flag_id: null });
    else changes.remove('suggestion_answer', key);
    return {
      name: {
        id: asked.dismissed ? 'suggestionDismissed' : 'suggestionBack',
        values: { ...suggestion.message.values, said: suggestion.message.id },
      },
      value: {},
    };
  });
};

/** The coach's own note, or what the suggestion says: as a sentence, and as data for other languages. */
function noteOf({ message }: Suggestion, own: string | undefined): Pick<NewFlag, 'note' | 'noteMessage'> {
  const sentence = sayMeasuring(message, 'en');
  return own === undefined || own === sentence ? { note: sentence, noteMessage: message } : { note: own };
}

function proposed(context: Context, clipId: string) {
  const library = context.library();
  const asked: ClipToMeasure = clipToMeasure(context, library.reading, clipId);
  const measurement = measurementOfClip(library, asked);
  return { asked, measurement, ...suggestionsOf(context, asked, measurement) };
}

function theOne(suggestions: readonly Suggestion[], suggestionId: string): Suggestion {
  const suggestion = suggestions.find(({ id }) => id === suggestionId);
  if (suggestion) return suggestion;
  throw gone();
}

function gone(): ProblemError {
  return new ProblemError('not-found', 'suggestionGone');
}

function numbersOf({ reps }: Suggestion, numberOf: (index: number) => number | undefined): number[] {
  return reps.map((index) => {
    const number = numberOf(index);
    if (number !== undefined) return number;
    throw new ProblemError('conflict', 'suggestedRepMissing', { rep: index });
  });
}
