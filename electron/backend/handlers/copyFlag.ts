import { ProblemError } from '../../contract/reply.ts';
import { findClip } from '../store/clips.ts';
import { actOnSession } from './acts.ts';
import { existing, flagValues, newFlag } from './flags.ts';
import type { Handler } from './handler.ts';
import { sessionCatalogue } from './judging.ts';

/**
 * Copies a flag to other places of its session. The fault goes along where the exercise there knows it; a suggestion's own words
 * stay behind, since they tell of the rep that was measured.
 */
export const copyFlag: Handler<'flags.copy'> = (context, { flagId, to }) => {
  const { reading } = context.library();
  const flag = existing(reading, flagId);
  const { session_id: sessionId } = findClip(reading, flag.clip_id);
  const { exercises } = sessionCatalogue(context, sessionId);
  const puts = to.map(({ clipId, reps, frame }) => {
    const clip = findClip(reading, clipId);
    if (clip.session_id !== sessionId) throw new ProblemError('bad-request', 'copyElsewhere');
    const faults = exercises.find(({ id }) => id === clip.exercise)?.faults ?? [];
    const isKnown = faults.some(({ id, criterion }) => id === flag.fault && criterion === flag.criterion);
    return newFlag(context, clip, {
      criterion: flag.criterion,
      severity: flag.severity,
      fault: isKnown ? flag.fault : null,
      reps,
      frame,
      note: flag.note_message === null ? flag.note : '',
      cue: flag.cue,
    });
  });
  return actOnSession(context, sessionId, (changes) => {
    const flagIds = puts.map((put) => put(changes));
    const values = { ...flagValues(changes.reading, flagId), places: flagIds.length };
    return { name: { id: 'flagCopied', values }, value: { flagIds } };
  });
};
