import { randomUUID } from 'node:crypto';
import { listClipsAnywhere } from '../store/clips.ts';
import { findEntry, nextEntryOrdinal, planColumns } from '../store/entries.ts';
import { findSession } from '../store/sessions.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';
import { knownExercise, parkUnfitOf, sessionCatalogue } from './judging.ts';

export const addEntry: Handler<'entries.add'> = (context, { sessionId, exercise, plan }) => {
  findSession(context.library().reading, sessionId);
  knownExercise(context.catalogue(), exercise);
  const entryId = randomUUID();
  return actOnSession(context, sessionId, (changes) => {
    changes.insert('entry', {
      id: entryId,
      session_id: sessionId,
      ordinal: nextEntryOrdinal(changes.reading, sessionId),
      exercise,
      ...planColumns(plan),
      sets_done: null,
    });
    return { name: { id: 'exerciseAdded', values: { exercise } }, value: { entryId } };
  });
};

/** What was judged and means nothing for another exercise is parked, and comes back with the exercise. */
export const updateEntry: Handler<'entries.update'> = (context, { entryId, exercise, plan, setsDone }) => {
  const { reading } = context.library();
  const entry = findEntry(reading, entryId);
  if (exercise !== undefined) knownExercise(sessionCatalogue(context, entry.session_id), exercise);
  return actOnSession(context, entry.session_id, (changes) => {
    changes.update(
      'entry',
      { id: entryId },
      {
        ...(exercise !== undefined && { exercise }),
        ...(plan !== undefined && planColumns(plan)),
        ...(setsDone !== undefined && { sets_done: setsDone }),
      },
    );
    if (exercise !== undefined && exercise !== entry.exercise) {
      const clipIds = listClipsAnywhere(changes.reading, entryId).map(({ id }) => id);
      parkUnfitOf(context, changes, { sessionId: entry.session_id, exercise, clipIds });
    }
    return { name: { id: 'exerciseChanged', values: { exercise: exercise ?? entry.exercise } }, value: {} };
  });
};
