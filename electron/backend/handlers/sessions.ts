import { randomUUID } from 'node:crypto';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { ProblemError } from '../../contract/reply.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { perform } from '../store/acts.ts';
import type { Row } from '../store/changes.ts';
import { listClips, listClipsAnywhere } from '../store/clips.ts';
import { equipmentColumn } from '../store/columns.ts';
import { inTransaction } from '../store/connection.ts';
import { listEntries } from '../store/entries.ts';
import { listTicks } from '../store/judgements.ts';
import { parkUnfit } from '../store/parked.ts';
import { readReview } from '../store/readReview.ts';
import { assertWritable, findSession, listSessionIdsOf, removeEmptySession } from '../store/sessions.ts';
import { findTrainee, removeTrainee } from '../store/trainees.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';

export const addSession: Handler<'sessions.add'> = (context, session) => {
  const id = addNewSession(context, session);
  tellChanged(context, id);
  return { sessionId: id };
};

/** Adds a session; whoever asks tells of it after the commit. Throws `not-found` for a trainee who isn't there. */
export function addNewSession(
  context: Context,
  { traineeId, title, date }: { readonly traineeId: string; readonly title: string; readonly date: string },
): string {
  const library = context.library();
  const trainee = findTrainee(library.writing, traineeId);
  const id = randomUUID();
  perform(library.writing, { sessionId: id, actorName: actorName(library), kind: 'once' }, (changes) => {
    changes.insert('session', {
      id,
      trainee_id: traineeId,
      title: title.slice(0, 200),
      date,
      notes: '',
      pain_note: '',
      voice: null,
      coach: null,
      created_at: new Date().toISOString(),
      rubric_version: context.rubricVersions().at(-1) ?? 1,
    });
    return { name: { id: 'sessionAdded', values: { trainee: trainee.name } }, value: undefined };
  });
  return id;
}

export const updateSession: Handler<'sessions.update'> = (context, { sessionId, ...change }) => {
  const session = findSession(context.library().reading, sessionId);
  const columns: Row = {
    ...(change.title !== undefined && { title: change.title }),
    ...(change.date !== undefined && { date: change.date }),
    ...(change.notes !== undefined && { notes: change.notes }),
    ...(change.painNote !== undefined && { pain_note: change.painNote }),
    ...(change.equipment !== undefined && equipmentColumn(change.equipment)),
  };
  return actOnSession(context, sessionId, (changes) => {
    changes.update('session', { id: sessionId }, columns);
    const differing = Object.entries(columns).filter(([name, value]) => session[name] !== value);
    const parts = differing.map(([name]) => name);
    return { name: { id: 'sessionChanged', values: { parts } }, value: {} };
  });
};

export const discardSession: Handler<'sessions.discard'> = (context, { sessionId, trainee }) => {
  const { writing } = context.library();
  const traineeGoes = inTransaction(writing, () => {
    assertWritable(writing, sessionId);
    const { trainee_id: traineeId } = findSession(writing, sessionId);
    removeEmptySession(writing, sessionId);
    if (trainee === 'keep' || listSessionIdsOf(writing, traineeId).length > 0) return false;
    removeTrainee(writing, traineeId);
    return true;
  });
  tellChanged(context, sessionId);
  if (traineeGoes) context.emit({ name: 'traineesChanged', data: {} });
  return {};
};

/** Flags keep their faults and go to the criteria these have in the other version; ticks that mean nothing there go. */
export const rejudgeSession: Handler<'sessions.rejudge'> = (context, { sessionId, version }) => {
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  if (!context.rubricVersions().includes(version)) {
    throw new ProblemError('not-found', 'noRubricVersion', { version });
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
      // What lies in the bin, or was parked, is judged by that version too.
      const clipIds = listClipsAnywhere(changes.reading, entry.id).map(({ id }) => id);
      parkUnfit(changes, exercise, clipIds);
    }
    return { name: { id: 'rejudged', values: { version } }, value: {} };
  });
};
