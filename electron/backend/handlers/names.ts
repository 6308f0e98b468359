import type { Context } from '../context/context.ts';
import { editionOfSession } from '../documents/editionOfSession.ts';
import { nameDoubtsOf } from '../documents/nameDoubts.ts';
import { decideOnNames } from '../store/nameDecisions.ts';
import { assertWritable, findSession } from '../store/sessions.ts';
import { findTrainee } from '../store/trainees.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';

export const listNameDoubts: Handler<'names.doubts'> = (context, { sessionIds, names, narrated }) =>
  [...new Set(sessionIds)].flatMap((sessionId) => {
    if ((names ?? wantedBy(context, sessionId)) === 'full') return [];
    const { edition } = editionOfSession(context, sessionId, { names: names ?? 'asWanted', to: 'tellSheet' });
    const doubts = nameDoubtsOf(context, sessionId, edition, narrated ? 'all' : 'none');
    return doubts.length === 0 ? [] : [{ sessionId, doubts }];
  });

/** How the trainee of a session wants to be named. Throws `not-found`. */
function wantedBy(context: Context, sessionId: string) {
  const { reading } = context.library();
  return findTrainee(reading, findSession(reading, sessionId).trainee_id).names;
}

export const decideNames: Handler<'names.decide'> = (context, { sessionId, places, is }) => {
  const { reading } = context.library();
  findSession(reading, sessionId);
  assertWritable(reading, sessionId);
  return actOnSession(context, sessionId, (changes) => {
    decideOnNames(changes, sessionId, places, is);
    const id = is === 'name' ? 'namesHidden' : 'namesCleared';
    return { name: { id, values: { count: places.length } }, value: {} };
  });
};
