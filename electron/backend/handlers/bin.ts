import path from 'node:path';
import type { BinItem } from '../../contract/bin.ts';
import { tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { redoAtDesk, undoAtDesk } from '../store/acts.ts';
import { findArrival, listRemovedArrivals, setRemoved } from '../store/arrivals.ts';
import { daysLeftOf, listBin, listInBin } from '../store/bin.ts';
import type { Changes } from '../store/changes.ts';
import { findClip, findClipAnywhere, listClips } from '../store/clips.ts';
import { inTransaction, type Reading } from '../store/connection.ts';
import { deleteNow, emptyBinNow, type InBin } from '../store/emptyBin.ts';
import { findEntry, findEntryAnywhere, listEntries } from '../store/entries.ts';
import { lookOfRow } from '../store/framing.ts';
import { findSession, findSessionAnywhere, listSecondLooks } from '../store/sessions.ts';
import { findTrainee } from '../store/trainees.ts';
import { actOnSession, actOnSessions } from './acts.ts';
import type { Handler } from './handler.ts';
import { parkUnfitOf } from './judging.ts';

const now = (): string => new Date().toISOString();

export const removeClip: Handler<'clips.remove'> = (context, { clipId }) => {
  const clip = findClip(context.library().reading, clipId);
  actOnSession(context, clip.session_id, (changes) => {
    changes.update('clip', { id: clipId }, { removed_at: now() });
    return { name: { id: 'clipRemoved', values: { clip: clip.name } }, value: {} };
  });
  stopWorkOn(context, [clipId]);
  return {};
};

export const removeEntry: Handler<'entries.remove'> = (context, { entryId }) => {
  const { reading } = context.library();
  const entry = findEntry(reading, entryId);
  const clips = listClips(reading, entryId);
  actOnSession(context, entry.session_id, (changes) => {
    changes.update('entry', { id: entryId }, { removed_at: now() });
    return { name: { id: 'exerciseRemoved', values: { exercise: entry.exercise } }, value: {} };
  });
  stopWorkOn(
    context,
    clips.map(({ id }) => id),
  );
  return {};
};

/** A second look without the session that it looks at again would compare with nothing: they go together. */
export const removeSession: Handler<'sessions.remove'> = (context, { sessionId }) => {
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  const looks = listSecondLooks(reading, sessionId).filter((look) => look.removed_at === null);
  const going = [session, ...looks].map(({ id }) => id);
  const clips = going.flatMap((id) => listEntries(reading, id)).flatMap((entry) => listClips(reading, entry.id));
  const trainee = findTrainee(reading, session.trainee_id).name;
  const removedAt = now();
  actOnSessions(context, going, { atDesk: true }, (changes) => {
    for (const id of going) changes.update('session', { id }, { removed_at: removedAt });
    return { name: { id: 'sessionRemoved', values: { trainee, title: session.title } }, value: {} };
  });
  stopWorkOn(
    context,
    clips.map(({ id }) => id),
  );
  return {};
};

/** What waits or runs for clips that went into the bin would fail, or be done for nothing. */
function stopWorkOn({ jobs }: Context, clipIds: readonly string[]): void {
  const gone = new Set(clipIds);
  for (const job of jobs.list()) {
    const isOpen = job.state === 'waiting' || job.state === 'running';
    if (job.kind === 'measure' && isOpen && job.clipId !== null && gone.has(job.clipId)) jobs.cancel(job.id);
  }
}

export const listBinned: Handler<'bin.list'> = (context) => {
  const at = new Date();
  const { reading } = context.library();
  const removed = listBin(reading).map((row) => ({
    kind: row.kind,
    id: row.id,
    sessionId: row.session_id,
    removedAt: row.removed_at,
    daysLeft: daysLeftOf(row.removed_at, at),
    traineeName: row.trainee_name,
    title: row.title,
    date: row.date,
    exercise: row.exercise,
    clipName: row.clip_name,
    clips: row.clips,
    poster: posterOf(reading, row.poster_clip_id),
  }));
  const files = listRemovedArrivals(reading).map((row) => ({
    ...{ kind: 'file' as const, id: row.id, sessionId: null, removedAt: row.removed_at },
    ...{ daysLeft: daysLeftOf(row.removed_at, at), traineeName: '', title: '', date: null, exercise: null },
    ...{ clipName: path.basename(row.path), clips: 1, poster: null },
  }));
  return [...removed, ...files].sort((a, b) => b.removedAt.localeCompare(a.removedAt));
};

const posterOf = (reading: Reading, clipId: string | null): BinItem['poster'] =>
  clipId === null ? null : { clipId, look: lookOfRow(findClipAnywhere(reading, clipId)) };

export const restoreBinned: Handler<'bin.restore'> = (context, { kind, id }) => restorers[kind](context, id);

/** Where something of the bin was, and is still in use. */
function sessionsWith(context: Context, { kind, id }: InBin): string[] {
  const { reading } = context.library();
  if (kind === 'entry') return [findEntryAnywhere(reading, id).session_id];
  if (kind === 'clip') return [findClipAnywhere(reading, id).session_id];
  return [];
}

export const deleteBinned: Handler<'bin.delete'> = (context, item) => {
  const changed = sessionsWith(context, item);
  deleteNow(context.library(), item);
  tellOfDeletion(context, changed);
  return {};
};

export const emptyWholeBin: Handler<'bin.empty'> = (context) => {
  const changed = listInBin(context.library().reading).flatMap((item) => sessionsWith(context, item));
  emptyBinNow(context.library());
  tellOfDeletion(context, changed);
  return {};
};

/** Sessions that are still there can undo less now; the library has more room. */
function tellOfDeletion(context: Context, sessionIds: readonly string[]): void {
  for (const id of new Set(sessionIds)) tellChanged(context, id);
  context.emit({ name: 'inboxChanged', data: {} });
}

const restorers: Readonly<Record<InBin['kind'], (context: Context, id: string) => Record<string, never>>> = {
  session: (context, id) => {
    const { reading } = context.library();
    const session = findSessionAnywhere(reading, id);
    const looks = listSecondLooks(reading, id).filter((look) => look.removed_at === session.removed_at);
    const back = [session, ...looks].map((one) => one.id);
    const trainee = findTrainee(reading, session.trainee_id).name;
    return actOnSessions(context, back, { atDesk: true }, (changes) => {
      for (const each of back) changes.update('session', { id: each }, { removed_at: null });
      return { name: { id: 'sessionBack', values: { trainee, title: session.title } }, value: {} };
    });
  },
  entry: (context, id) => {
    const { reading } = context.library();
    const entry = findEntryAnywhere(reading, id);
    findSession(reading, entry.session_id);
    return actOnSession(context, entry.session_id, (changes) => {
      changes.update('entry', { id }, { removed_at: null });
      parkAgain(context, changes, entry, listClips(changes.reading, id));
      return { name: { id: 'exerciseBack', values: { exercise: entry.exercise } }, value: {} };
    });
  },
  file: (context, id) => {
    const { writing } = context.library();
    inTransaction(writing, () => {
      setRemoved(writing, id, false);
      findArrival(writing, id);
    });
    context.emit({ name: 'inboxChanged', data: {} });
    return {};
  },
  clip: (context, id) => {
    const { reading } = context.library();
    const clip = findClipAnywhere(reading, id);
    findEntry(reading, clip.entry_id);
    return actOnSession(context, clip.session_id, (changes) => {
      changes.update('clip', { id }, { removed_at: null });
      parkAgain(context, changes, clip, [clip]);
      return { name: { id: 'clipBack', values: { clip: clip.name } }, value: {} };
    });
  },
};

/** The rubric may have changed while they lay in the bin. */
function parkAgain(
  context: Context,
  changes: Changes,
  { session_id, exercise }: { readonly session_id: string; readonly exercise: string },
  clips: readonly { readonly id: string }[],
): void {
  const clipIds = clips.map(({ id }) => id);
  parkUnfitOf(context, changes, { sessionId: session_id, exercise, clipIds });
}

export const undoDesk: Handler<'desk.undo'> = (context) => {
  const { sessionIds, name } = undoAtDesk(context.library().writing);
  for (const id of sessionIds) tellChanged(context, id);
  return { name };
};

export const redoDesk: Handler<'desk.redo'> = (context) => {
  const { sessionIds, name } = redoAtDesk(context.library().writing);
  for (const id of sessionIds) tellChanged(context, id);
  return { name };
};
