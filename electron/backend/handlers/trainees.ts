import { randomUUID } from 'node:crypto';
import { actorName } from '../context/actorName.ts';
import { perform } from '../store/acts.ts';
import { traineeColumns } from '../store/trainees.ts';
import type { Handler } from './handler.ts';

export const addTrainee: Handler<'trainees.add'> = (context, { names, ...trainee }) => {
  const id = randomUUID();
  const library = context.library();
  const about = { sessionId: null, who: actorName(library), kind: 'once' } as const;
  perform(library.writing, about, (changes) => {
    changes.insert('trainee', { id, ...traineeColumns(trainee), names, created_at: new Date().toISOString() });
    return { name: `Trainee added: ${trainee.name}`, value: undefined };
  });
  context.emit({ name: 'deskChanged', data: {} });
  return { traineeId: id };
};
