import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import type { CheckedParams } from '../../contract/requests.ts';
import { clipName } from '../arrivals/clipName.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { perform } from '../store/acts.ts';
import { findArrival, setPlaced } from '../store/arrivals.ts';
import type { Changes } from '../store/changes.ts';
import { nextClipOrdinal } from '../store/clips.ts';
import { inTransaction } from '../store/connection.ts';
import { listEntries, nextEntryOrdinal, planColumns } from '../store/entries.ts';
import { type FootageRow, findFootage, sessionShowsFootage } from '../store/footage.ts';
import { findSession } from '../store/sessions.ts';
import type { Handler } from './handler.ts';
import { knownExercise } from './judging.ts';
import { addNewSession } from './sessions.ts';
import { addNewTrainee } from './trainees.ts';

type Placed = CheckedParams<'inbox.bringIn'>['clips'][number];

/**
 * All of it or nothing: trainees and sessions that are not there yet are added, then each session gets its clips in one act,
 * which its history can take back; what is taken back lies in the inbox again.
 */
export const bringIn: Handler<'inbox.bringIn'> = (context, { clips }) => {
  const { writing } = context.library();
  const trainees = new Map<string, string>();
  const added = inTransaction(writing, () => {
    const bySession = new Map<string, Placed[]>();
    const newSessions = new Map<string, string>();
    for (const placed of clips) {
      const traineeId = ownerOf(context, placed, trainees);
      const key = `${traineeId} ${placed.date}`;
      const sessionId = placed.sessionId ?? newSessions.get(key) ?? addSessionOf(context, traineeId, placed.date);
      if (placed.sessionId === null) newSessions.set(key, sessionId);
      else assertOwn(context, placed.sessionId, traineeId);
      bySession.set(sessionId, [...(bySession.get(sessionId) ?? []), placed]);
    }
    return [...bySession].map(([sessionId, its]) => ({ sessionId, clipIds: addClips(context, sessionId, its) }));
  });
  if (trainees.size > 0) context.emit({ name: 'traineesChanged', data: {} });
  for (const { sessionId } of added) tellChanged(context, sessionId);
  context.emit({ name: 'inboxChanged', data: {} });
  return {
    sessionIds: added.map(({ sessionId }) => sessionId),
    clipIds: added.flatMap(({ clipIds }) => clipIds),
  };
};

/** As a coach knows nobody yet: what can be said of everybody. */
const usual = {
  goal: 'growth',
  experience: 'experienced',
  units: 'kg',
  minor: false,
  names: 'full',
  notes: '',
} as const;

function ownerOf(context: Context, { trainee }: Placed, added: Map<string, string>): string {
  if (trainee.kind === 'known') return trainee.traineeId;
  const id = added.get(trainee.name) ?? addNewTrainee(context, { name: trainee.name, ...usual });
  added.set(trainee.name, id);
  return id;
}

const addSessionOf = (context: Context, traineeId: string, date: string): string =>
  addNewSession(context, { traineeId, date, title: '' });

function assertOwn(context: Context, sessionId: string, traineeId: string): void {
  if (findSession(context.library().writing, sessionId).trainee_id === traineeId) return;
  throw new ProblemError('conflict', 'sessionOfAnother');
}

function addClips(context: Context, sessionId: string, placed: readonly Placed[]): string[] {
  const library = context.library();
  const { writing } = library;
  const about = { sessionId, actorName: actorName(library), kind: 'undoable' } as const;
  const added = perform(writing, about, (changes) => {
    const clipIds = placed.map((one) => addClip(context, changes, sessionId, one));
    return { name: { id: 'clipsAdded', values: { count: placed.length } }, value: clipIds };
  });
  for (const [index, { arrivalId }] of placed.entries()) {
    setPlaced(writing, arrivalId, { sessionId, clipId: added[index] ?? '' });
  }
  return added;
}

function addClip(context: Context, changes: Changes, sessionId: string, placed: Placed): string {
  const arrival = findArrival(changes.reading, placed.arrivalId);
  const footage = arrival.footage_id === null ? undefined : findFootage(changes.reading, arrival.footage_id);
  if (footage === undefined) throw unread(arrival.path);
  const name = clipName(arrival.path);
  if (sessionShowsFootage(changes.reading, sessionId, footage.id)) {
    throw new ProblemError('conflict', 'alreadyInSession', { file: name });
  }
  const entryId = entryFor(context, changes, sessionId, placed.exercise);
  const id = randomUUID();
  changes.insert('clip', {
    id,
    entry_id: entryId,
    footage_id: footage.id,
    ordinal: nextClipOrdinal(changes.reading, entryId),
    name,
    view: placed.view,
    real_time_factor: factorOf(footage),
    load_kg: placed.loadKg,
  });
  return id;
}

const factorOf = ({ real_time_factor }: FootageRow): number => Math.min(100, Math.max(0.01, real_time_factor));

const unread = (file: string): ProblemError =>
  new ProblemError('conflict', 'arrivalUnread', { file: path.basename(file).slice(0, 80) });

/** The exercise as the session has it; where it doesn't, it comes with the same act. */
function entryFor(context: Context, changes: Changes, sessionId: string, exercise: string): string {
  const there = listEntries(changes.reading, sessionId).find((entry) => entry.exercise === exercise);
  if (there !== undefined) return there.id;
  knownExercise(context.catalogue(), exercise);
  const id = randomUUID();
  const ordinal = nextEntryOrdinal(changes.reading, sessionId);
  changes.insert('entry', { id, session_id: sessionId, ordinal, exercise, ...planColumns(null), sets_done: null });
  return id;
}
