import { type TrainedEntry, type TrainedSession, weekDays, within } from '../../../engine/programme/week.ts';
import { listClips } from './clips.ts';
import type { Reading } from './connection.ts';
import { listEntries, planOf } from './entries.ts';
import { listSessionsBefore, type SessionRow } from './sessions.ts';

/**
 * What a trainee did in the week before a session, as the findings over the week need it; nothing before a second look,
 * whose first session is the same training.
 */
export function trainedBefore(reading: Reading, session: SessionRow): TrainedSession[] {
  if (session.second_look_of !== null) return [];
  const before = listSessionsBefore(reading, session).map(({ id, date }) => ({ id, session: { date }, entries: [] }));
  return within(before, { date: session.date, days: weekDays }).map(({ id, session: { date } }) => ({
    session: { date },
    entries: trainedEntries(reading, id),
  }));
}

function trainedEntries(reading: Reading, sessionId: string): TrainedEntry[] {
  return listEntries(reading, sessionId).map((row) => {
    const plan = planOf(row);
    return {
      exercise: row.exercise,
      ...(plan && { plan }),
      ...(row.sets_done !== null && { setsDone: row.sets_done }),
      clips: listClips(reading, row.id).map(({ id }) => id),
    };
  });
}
