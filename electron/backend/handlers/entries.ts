import { randomUUID } from 'node:crypto';
import { findExercise } from '../../../engine/exercises/catalogue.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { listClips } from '../store/clips.ts';
import type { Reading } from '../store/connection.ts';
import { type EntryRow, findEntry, nextEntryOrdinal, planColumns } from '../store/entries.ts';
import { listFlags, listTicks } from '../store/judgements.ts';
import { findSession } from '../store/sessions.ts';
import { actOnSession } from './acts.ts';
import { deleteClip } from './clips.ts';
import type { Handler } from './handler.ts';
import { knownExercise, sessionCatalogue } from './judging.ts';

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

export const updateEntry: Handler<'entries.update'> = (context, { entryId, exercise, plan, setsDone }) => {
  const { reading } = context.library();
  const entry = findEntry(reading, entryId);
  if (exercise !== undefined && exercise !== entry.exercise) assertFits(context, reading, entry, exercise);
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
    return { name: { id: 'exerciseChanged', values: { exercise: exercise ?? entry.exercise } }, value: {} };
  });
};

export const removeEntry: Handler<'entries.remove'> = (context, { entryId }) => {
  const entry = findEntry(context.library().reading, entryId);
  return actOnSession(context, entry.session_id, (changes) => {
    for (const clip of listClips(changes.reading, entryId)) deleteClip(changes, clip.id);
    changes.remove('entry', { id: entryId });
    return { name: { id: 'exerciseRemoved', values: { exercise: entry.exercise } }, value: {} };
  });
};

/** Another exercise may not be judged by what the entry's flags speak of; they must not lose their meaning. */
function assertFits(context: Context, reading: Reading, entry: EntryRow, exerciseId: string): void {
  const catalogue = sessionCatalogue(context, entry.session_id);
  const next = knownExercise(catalogue, exerciseId);
  const judged = new Set(next.criteria.map((each) => each.id));
  const clips = listClips(reading, entry.id);
  const ticksFit = clips.every((clip) => listTicks(reading, clip.id).every((tick) => judged.has(tick.criterion)));
  const flagsFit = clips
    .flatMap((clip) => listFlags(reading, clip.id))
    .every(({ criterion, fault }) => {
      const known = next.faults.some((each) => each.id === fault && each.criterion === criterion);
      return judged.has(criterion) && (fault === null || known);
    });
  if (ticksFit && flagsFit) return;
  const former = findExercise(catalogue, entry.exercise)?.name ?? entry.exercise;
  throw new ProblemError('conflict', 'exerciseUnfit', { former, next: next.name });
}
