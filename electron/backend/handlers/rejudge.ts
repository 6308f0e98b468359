import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { ProblemError } from '../../contract/reply.ts';
import { listClips } from '../store/clips.ts';
import { listEntries } from '../store/entries.ts';
import { readReview } from '../store/readReview.ts';
import { findSession } from '../store/sessions.ts';
import { listTicks } from '../store/ticks.ts';
import { actOnSession } from './act.ts';
import type { Handler } from './handler.ts';

/** Flags keep their faults and go to the criteria these have in the other version; ticks that mean nothing there go. */
export const rejudgeSession: Handler<'sessions.rejudge'> = (context, { sessionId, version }) => {
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  if (!context.rubricVersions().includes(version)) {
    throw new ProblemError('not-found', `There is no version ${version} of the rubric here; nothing was changed.`);
  }
  const to = context.catalogue(version);
  const review = reviewUnder(readReview(reading, sessionId), {
    from: context.catalogue(session.rubric_version),
    to,
  });
  return actOnSession(context, sessionId, (changes) => {
    changes.update('session', { id: sessionId }, { rubric_version: version });
    for (const { id, criterion, fault } of review.entries.flatMap((entry) => entry.flags)) {
      changes.update('flag', { id }, { criterion, fault });
    }
    for (const entry of listEntries(changes.reading, sessionId)) {
      const exercise = to.exercises.find((one) => one.id === entry.exercise);
      if (exercise === undefined) continue;
      const judged = new Set(exercise.criteria.map((one) => one.id));
      const ticks = listClips(changes.reading, entry.id).flatMap((clip) => listTicks(changes.reading, clip.id));
      for (const tick of ticks) if (!judged.has(tick.criterion)) changes.remove('tick', { id: tick.id });
    }
    return { name: `Judged by version ${version} of the rubric`, value: {} };
  });
};
