import { randomUUID } from 'node:crypto';
import { ProblemError } from '../../contract/reply.ts';
import type { CheckedParams } from '../../contract/requests.ts';
import type { Context } from '../context/context.ts';
import type { Changes } from '../store/changes.ts';
import { type ClipHome, findClip, listClipsAnywhere } from '../store/clips.ts';
import {
  type EntryRow,
  findEntry,
  listEntries,
  listEntriesAnywhere,
  nextEntryOrdinal,
  planColumns,
} from '../store/entries.ts';
import { listHandovers } from '../store/handovers.ts';
import { listSentLetters } from '../store/letters.ts';
import { findSession, listPlaces, listSecondLooks, type SessionRow } from '../store/sessions.ts';
import { findTrainee } from '../store/trainees.ts';
import { actOnSessions } from './acts.ts';
import type { Handler } from './handler.ts';
import { knownExercise, parkUnfitOf, sessionCatalogue } from './judging.ts';

export const moveClip: Handler<'clips.move'> = (context, { clipId, to }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const sessionId = sessionFor(context, clip, to);
  assertNoSecondLook(context, clip.session_id, sessionId);
  if (to.kind === 'exercise') knownExercise(sessionCatalogue(context, sessionId), to.exercise);
  return actOnSessions(context, [clip.session_id, sessionId], {}, (changes) => {
    const entry = entryFor(changes, clip, sessionId, to);
    changes.update('clip', { id: clipId }, { entry_id: entry.id });
    putInOrder(
      changes,
      'clip',
      clipId,
      listClipsAnywhere(changes.reading, entry.id),
      to.kind === 'entry' ? to.before : null,
    );
    parkUnfitOf(context, changes, { sessionId, exercise: entry.exercise, clipIds: [clipId] });
    if (entry.id !== clip.entry_id) removeBareEntry(changes, clip.entry_id);
    const id = to.kind === 'exercise' ? 'clipJudgedAs' : 'clipMoved';
    return { name: { id, values: { clip: clip.name, exercise: entry.exercise } }, value: {} };
  });
};

type ClipTarget = CheckedParams<'clips.move'>['to'];

function sessionFor(context: Context, clip: ClipHome, to: ClipTarget): string {
  const { reading } = context.library();
  switch (to.kind) {
    case 'entry':
      return findEntry(reading, to.entryId).session_id;
    case 'session':
      return findSession(reading, to.sessionId).id;
    case 'exercise':
      return clip.session_id;
  }
}

/** The entry that a clip goes into, made when missing. */
function entryFor(
  changes: Changes,
  clip: ClipHome,
  sessionId: string,
  to: ClipTarget,
): { readonly id: string; readonly exercise: string } {
  if (to.kind === 'entry') return findEntry(changes.reading, to.entryId);
  const exercise = to.kind === 'exercise' ? to.exercise : clip.exercise;
  const there = listEntries(changes.reading, sessionId).find((entry) => entry.exercise === exercise);
  if (there !== undefined) return there;
  const id = randomUUID();
  const ordinal = nextEntryOrdinal(changes.reading, sessionId);
  changes.insert('entry', { id, session_id: sessionId, ordinal, exercise, ...planColumns(null), sets_done: null });
  return { id, exercise };
}

/** An entry that holds no clip, not even one in the bin, and of which nothing is stated, says nothing. */
function removeBareEntry(changes: Changes, entryId: string): void {
  const entry = findEntry(changes.reading, entryId);
  const isStated =
    entry.plan_sets !== null || entry.plan_list !== null || entry.sets_done !== null || entry.override_score !== null;
  if (!isStated && listClipsAnywhere(changes.reading, entryId).length === 0) changes.remove('entry', { id: entryId });
}

/** Puts a row in front of another one of its list, or behind all; the list holds it already. */
function putInOrder(
  changes: Changes,
  table: 'clip' | 'entry',
  id: string,
  list: readonly { readonly id: string }[],
  before: string | null,
): void {
  const others = list.filter((row) => row.id !== id).map((row) => row.id);
  const place = before === null ? -1 : others.indexOf(before);
  const order = place < 0 ? [...others, id] : others.toSpliced(place, 0, id);
  for (const [index, each] of order.entries()) changes.update(table, { id: each }, { ordinal: index + 1 });
}

export const moveEntry: Handler<'entries.move'> = (context, { entryId, before, ...asked }) => {
  const { reading } = context.library();
  const entry = findEntry(reading, entryId);
  const sessionId = findSession(reading, asked.sessionId ?? entry.session_id).id;
  assertNoSecondLook(context, entry.session_id, sessionId);
  return actOnSessions(context, [entry.session_id, sessionId], {}, (changes) => {
    takeEntry(context, changes, entry, sessionId);
    putInOrder(changes, 'entry', entryId, listEntriesAnywhere(changes.reading, sessionId), before);
    return { name: { id: 'exerciseMoved', values: { exercise: entry.exercise } }, value: {} };
  });
};

/** Puts an entry behind those of a session; it may be judged by another version of the rubric there. */
function takeEntry(context: Context, changes: Changes, entry: EntryRow, sessionId: string): void {
  if (entry.session_id === sessionId) return;
  const ordinal = nextEntryOrdinal(changes.reading, sessionId);
  changes.update('entry', { id: entry.id }, { session_id: sessionId, ordinal });
  const clipIds = listClipsAnywhere(changes.reading, entry.id).map(({ id }) => id);
  parkUnfitOf(context, changes, { sessionId, exercise: entry.exercise, clipIds });
}

export const mergeEntries: Handler<'entries.merge'> = (context, { entryId, into }) => {
  const { reading } = context.library();
  const entry = findEntry(reading, entryId);
  const target = findEntry(reading, into);
  if (entry.session_id !== target.session_id) throw new ProblemError('conflict', 'mergeElsewhere');
  if (entry.exercise !== target.exercise || entryId === into) throw new ProblemError('conflict', 'mergeOtherExercise');
  return actOnSessions(context, [entry.session_id], {}, (changes) => {
    mergeInto(changes, entry, target);
    return { name: { id: 'exercisesMerged', values: { exercise: entry.exercise } }, value: {} };
  });
};

/** The target's own plan and grade by hand count where it has one; sets done add up. */
function mergeInto(changes: Changes, entry: EntryRow, target: EntryRow): void {
  const order = [target, entry].flatMap(({ id }) => listClipsAnywhere(changes.reading, id));
  for (const [index, { id }] of order.entries()) {
    changes.update('clip', { id }, { entry_id: target.id, ordinal: index + 1 });
  }
  const { plan_sets, plan_reps, plan_load_kg, plan_tempo, plan_reps_in_reserve, plan_list } = entry;
  const { override_score, override_reason } = entry;
  const setsDone = [entry.sets_done, target.sets_done].filter((sets) => sets !== null);
  changes.update(
    'entry',
    { id: target.id },
    {
      ...(!isPlanned(target) && { plan_sets, plan_reps, plan_load_kg, plan_tempo, plan_reps_in_reserve, plan_list }),
      ...(target.override_score === null && { override_score, override_reason }),
      sets_done:
        setsDone.length === 0
          ? null
          : Math.min(
              50,
              setsDone.reduce((sum, sets) => sum + sets, 0),
            ),
    },
  );
  changes.remove('entry', { id: entry.id });
}

const isPlanned = ({ plan_sets, plan_list }: EntryRow): boolean => plan_sets !== null || plan_list !== null;

export const moveSession: Handler<'sessions.move'> = (context, { sessionId, traineeId }) => {
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  if (session.second_look_of !== null) throw new ProblemError('conflict', 'secondLookStays');
  const trainee = findTrainee(reading, traineeId).name;
  const going = [sessionId, ...listSecondLooks(reading, sessionId).map(({ id }) => id)];
  return actOnSessions(context, going, { atDesk: true }, (changes) => {
    for (const id of going) changes.update('session', { id }, { trainee_id: traineeId });
    return { name: { id: 'sessionMoved', values: { trainee } }, value: {} };
  });
};

export const renameSession: Handler<'sessions.rename'> = (context, { sessionId, title }) => {
  findSession(context.library().reading, sessionId);
  return actOnSessions(context, [sessionId], { atDesk: true, writable: true }, (changes) => {
    changes.update('session', { id: sessionId }, { title });
    return { name: { id: 'sessionChanged', values: { parts: ['title'] } }, value: {} };
  });
};

export const finishSession: Handler<'sessions.finish'> = (context, { sessionId, finished }) => {
  const { reading } = context.library();
  const { title, trainee_id, second_look_of } = findSession(reading, sessionId);
  if (second_look_of !== null) throw new ProblemError('conflict', 'secondLookStays');
  const trainee = findTrainee(reading, trainee_id).name;
  return actOnSessions(context, [sessionId], { atDesk: true, writable: true }, (changes) => {
    changes.update('session', { id: sessionId }, { finished_at: finished ? new Date().toISOString() : null });
    return { name: { id: finished ? 'sessionFinished' : 'sessionTakenUp', values: { trainee, title } }, value: {} };
  });
};

export const mergeSessions: Handler<'sessions.merge'> = (context, { sessionId, into }) => {
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  const target = findSession(reading, into);
  assertNoSecondLook(context, sessionId, into);
  const isSameDay = session.trainee_id === target.trainee_id && session.date === target.date;
  if (!isSameDay || sessionId === into) throw new ProblemError('conflict', 'mergeOtherDay');
  // What was sent of the emptied session would go with the bin.
  if (listSentLetters(reading, sessionId).length > 0 || listHandovers(reading, sessionId).length > 0) {
    throw new ProblemError('conflict', 'mergeSent', { title: session.title === '' ? 'none' : session.title });
  }
  const looks = listSecondLooks(reading, sessionId).map(({ id }) => id);
  return actOnSessions(context, [into, sessionId, ...looks], { atDesk: true, writable: true }, (changes) => {
    for (const entry of listEntriesAnywhere(changes.reading, sessionId)) {
      takeEntry(context, changes, entry, into);
      const alike = listEntries(changes.reading, into).find(
        ({ id, exercise }) => id !== entry.id && exercise === entry.exercise,
      );
      const clash = alike !== undefined && isPlanned(alike) && isPlanned(entry);
      if (alike !== undefined && !clash && entry.removed_at === null) {
        mergeInto(changes, findEntry(changes.reading, entry.id), alike);
      }
    }
    for (const id of looks) changes.update('session', { id }, { second_look_of: into });
    changes.update('session', { id: into }, ofBoth(target, session));
    changes.update('session', { id: sessionId }, { removed_at: new Date().toISOString() });
    return { name: { id: 'sessionsMerged', values: { title: session.title } }, value: {} };
  });
};

const longestRemark = 2000;

/** What is stated of a session into which another one goes: its own where it has it, both their notes. */
function ofBoth(target: SessionRow, session: SessionRow) {
  const joined = (own: string, other: string): string => [own, other].filter((text) => text.trim() !== '').join('\n');
  const notes = joined(target.notes, session.notes);
  const painNote = joined(target.pain_note, session.pain_note);
  if (notes.length > longestRemark || painNote.length > longestRemark) {
    throw new ProblemError('conflict', 'notesTooLongToMerge');
  }
  return {
    notes,
    pain_note: painNote,
    title: target.title === '' ? session.title : target.title,
    equipment: target.equipment ?? session.equipment,
  };
}

/** A second look shows the clips of its first session, and no others. */
function assertNoSecondLook(context: Context, fromId: string, toId: string): void {
  if (fromId === toId) return;
  const { reading } = context.library();
  const isLook = [fromId, toId].some((id) => findSession(reading, id).second_look_of !== null);
  if (isLook) throw new ProblemError('conflict', 'secondLookStays');
}

export const getPlaces: Handler<'sessions.places'> = (context, { sessionId, ...asked }) => {
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  const traineeId = findTrainee(reading, asked.traineeId ?? session.trainee_id).id;
  const places = listPlaces(reading, traineeId).map(({ id, title, date }) => ({
    sessionId: id,
    title,
    date,
    entries: listEntries(reading, id).map((entry) => ({ entryId: entry.id, exercise: entry.exercise })),
  }));
  return { traineeId, places };
};
