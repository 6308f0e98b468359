import { randomUUID } from 'node:crypto';
import { actorName } from '../context/actorName.ts';
import { tellChanged } from '../context/tellChanged.ts';
import { perform } from '../store/acts.ts';
import { listSessionIdsOf } from '../store/sessions.ts';
import { forgetContents } from '../store/summaries.ts';
import { findTrainee, traineeColumns } from '../store/trainees.ts';
import type { Handler } from './handler.ts';

export const addTrainee: Handler<'trainees.add'> = (context, { names, ...trainee }) => {
  const id = randomUUID();
  const library = context.library();
  const about = { sessionId: null, who: actorName(library), kind: 'once' } as const;
  perform(library.writing, about, (changes) => {
    changes.insert('trainee', { id, ...traineeColumns(trainee), names, created_at: new Date().toISOString() });
    return { name: `Trainee added: ${trainee.name}`, value: undefined };
  });
  context.emit({ name: 'traineesChanged', data: {} });
  return { traineeId: id };
};

export const setNames: Handler<'trainees.names'> = (context, { traineeId, names }) => {
  const library = context.library();
  const { name } = findTrainee(library.reading, traineeId);
  perform(library.writing, { sessionId: null, who: actorName(library), kind: 'once' }, (changes) => {
    changes.update('trainee', { id: traineeId }, { names });
    forgetContents(library.writing, traineeId);
    return { name: `How ${name} is named`, value: undefined };
  });
  context.emit({ name: 'traineesChanged', data: {} });
  for (const sessionId of listSessionIdsOf(library.reading, traineeId)) tellChanged(context, sessionId);
  return {};
};
