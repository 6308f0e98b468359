import { randomUUID } from 'node:crypto';
import { actorName } from '../context/actorName.ts';
import { tellChanged } from '../context/tellChanged.ts';
import { perform } from '../store/acts.ts';
import { inTransaction } from '../store/connection.ts';
import type { Row } from '../store/journaledTables.ts';
import { assertWritable, findSession, listSessionIdsOf, removeEmptySession } from '../store/sessions.ts';
import { findTrainee, removeTrainee } from '../store/trainees.ts';
import { actOnSession } from './act.ts';
import type { Handler } from './handler.ts';

export const addSession: Handler<'sessions.add'> = (context, { traineeId, title, date }) => {
  const library = context.library();
  const trainee = findTrainee(library.reading, traineeId);
  const id = randomUUID();
  perform(library.writing, { sessionId: id, who: actorName(library), kind: 'once' }, (changes) => {
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
    return { name: `Session added for ${trainee.name}`, value: undefined };
  });
  tellChanged(context, id);
  return { sessionId: id };
};

export const updateSession: Handler<'sessions.update'> = (context, { sessionId, ...change }) => {
  findSession(context.library().reading, sessionId);
  const columns: Row = {
    ...(change.title !== undefined && { title: change.title }),
    ...(change.date !== undefined && { date: change.date }),
    ...(change.notes !== undefined && { notes: change.notes }),
    ...(change.painNote !== undefined && { pain_note: change.painNote }),
  };
  const words: Readonly<Record<string, string>> = { pain_note: 'pain note' };
  return actOnSession(context, sessionId, (changes) => {
    changes.update('session', { id: sessionId }, columns);
    const what = Object.keys(columns).map((name) => words[name] ?? name);
    return { name: `Session: ${what.join(', ')}`, value: {} };
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
