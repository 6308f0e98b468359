import { randomUUID } from 'node:crypto';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { sayAction } from '../../../engine/wording/sayAction.ts';
import { ProblemError } from '../../contract/reply.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { perform } from '../store/acts.ts';
import type { Changes } from '../store/changes.ts';
import { listClips } from '../store/clips.ts';
import { type EntryRow, listEntries } from '../store/entries.ts';
import { findSetUp, setUpRow } from '../store/measuring.ts';
import { readReview } from '../store/readReview.ts';
import { listReps } from '../store/reps.ts';
import { findSecondLook, findSession, type SessionRow } from '../store/sessions.ts';
import { agreementOf, comparedSessions, judgedIn } from './agreement.ts';
import type { Handler } from './handler.ts';
import { sessionCatalogue } from './judging.ts';

/**
 * Same clips, reps, plans and rubric, set up for measuring in the same way, since measures are facts; no flags, ticks,
 * notes, grade by hand or answers to suggestions: nothing of the first judgement shows.
 */
export const startSecondLook: Handler<'secondLook.start'> = (context, { sessionId, language = 'en' }) => {
  const library = context.library();
  const session = findSession(library.reading, sessionId);
  assertSomethingToCheck(context, session);
  const id = randomUUID();
  perform(library.writing, { sessionId: id, actorName: actorName(library), kind: 'once' }, (changes) => {
    changes.insert('session', {
      ...session,
      id,
      title: sayAction({ id: 'secondLookOf', values: { title: session.title } }, language, null).slice(0, 200),
      notes: '',
      override_score: null,
      override_reason: null,
      second_look_of: sessionId,
      // It is one's own judgement, also of what came from another coach's Rackside.
      read_only: 0,
      finished_at: null,
      created_at: new Date().toISOString(),
    });
    for (const entry of listEntries(changes.reading, sessionId)) copyEntry(changes, entry, id);
    return { name: { id: 'secondLookStarted', values: {} }, value: undefined };
  });
  tellChanged(context, id);
  return { sessionId: id };
};

function assertSomethingToCheck(context: Context, session: SessionRow): void {
  const { reading } = context.library();
  if (session.second_look_of !== null) {
    throw new ProblemError('conflict', 'secondLookOfSecond');
  }
  const { entries } = gradeSession(readReview(reading, session.id), sessionCatalogue(context, session.id));
  if (entries.every((entry) => entry.criteria.every(({ lookedAt }) => !lookedAt))) {
    throw new ProblemError('conflict', 'nothingJudged');
  }
  const look = findSecondLook(reading, session.id);
  if (look !== undefined && isUnderWay(context, session.id, look.id)) {
    throw new ProblemError('conflict', 'secondLookOpen');
  }
}

/** Until everything that was judged first has been looked at again. */
const isUnderWay = (context: Context, firstId: string, secondId: string): boolean =>
  agreementOf(context, firstId, judgedIn(context, secondId)).agreement.onlyFirst > 0;

function copyEntry(changes: Changes, entry: EntryRow, sessionId: string): void {
  const newEntry = randomUUID();
  changes.insert('entry', {
    ...entry,
    id: newEntry,
    session_id: sessionId,
    override_score: null,
    override_reason: null,
  });
  const clips = listClips(changes.reading, entry.id);
  const newIds = new Map(clips.map(({ id }) => [id, randomUUID()]));
  for (const clip of clips) {
    const newClip = newIds.get(clip.id) ?? randomUUID();
    const lead = newIds.get(clip.same_set_as ?? '') ?? null;
    const sameSet = { same_set_as: lead, same_set_offset_us: lead === null ? null : clip.same_set_offset_us };
    changes.insert('clip', { ...clip, id: newClip, entry_id: newEntry, ...sameSet });
    for (const rep of listReps(changes.reading, clip.id)) {
      changes.insert('rep', { ...rep, id: randomUUID(), clip_id: newClip });
    }
    const setUp = findSetUp(changes.reading, clip.id);
    if (setUp) changes.insert('clip_set_up', setUpRow(newClip, setUp));
  }
}

export const getSecondLook: Handler<'secondLook.get'> = (context, { sessionId }) => {
  const { reading } = context.library();
  const look = findSecondLook(reading, findSession(reading, sessionId).id);
  if (look === undefined) return { look: null };
  return { look: { sessionId: look.id, state: isUnderWay(context, sessionId, look.id) ? 'underWay' : 'finished' } };
};

export const compareSecondLook: Handler<'secondLook.compare'> = (context, { sessionId }) => {
  const { reading } = context.library();
  const second = findSecondLook(reading, findSession(reading, sessionId).id);
  if (second === undefined) {
    throw new ProblemError('conflict', 'noSecondLook');
  }
  return comparedSessions(context, sessionId, second.id);
};
