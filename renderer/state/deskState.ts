import { create } from 'zustand';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { NamedTrainee } from '../../electron/contract/trainees.ts';
import { read } from '../bridge/read.ts';

/** The lists that the desk shows, a page at a time. */
export type DeskList = 'due' | 'done' | 'secondLooks';

type DeskState = {
  readonly loaded: boolean;
  /** The sessions read so far, second looks among them, the newest day first. */
  readonly sessions: readonly SessionSummary[];
  readonly trainees: readonly NamedTrainee[];
  /** Where each list goes on; null when all of it was read. */
  readonly next: Readonly<Record<DeskList, string | null>>;
  /** Reads the first page of each list, and the trainees. */
  readonly refresh: () => Promise<void>;
  readonly refreshTrainees: () => Promise<void>;
  /** Reads the next page of a list. */
  readonly loadMore: (list: DeskList) => Promise<void>;
  /** Reads one session that may be on no page yet. */
  readonly include: (sessionId: string) => Promise<void>;
  /** Puts a session's new summary in its place; null takes it away. */
  readonly upsert: (sessionId: string, summary: SessionSummary | null) => void;
};

/** Which list a session stands in: second looks by themselves, what is one's own until it was sent, and the rest. */
export function listOf({ secondLookOf, readOnly, finished, state }: SessionSummary): DeskList {
  if (secondLookOf !== null) return 'secondLooks';
  return readOnly || finished || state === 'sent' ? 'done' : 'due';
}

const newestFirst = (sessions: readonly SessionSummary[]): readonly SessionSummary[] =>
  [...sessions].sort((a, b) => b.date.localeCompare(a.date));

/** Puts sessions in the place of those known, and those that are new before the others of their day. */
function merged(known: readonly SessionSummary[], read: readonly SessionSummary[]): readonly SessionSummary[] {
  const fresh = new Map(read.map((summary) => [summary.id, summary]));
  const kept = known.map((summary) => fresh.get(summary.id) ?? summary);
  const keptIds = new Set(kept.map(({ id }) => id));
  return newestFirst([...read.filter(({ id }) => !keptIds.has(id)), ...kept]);
}

/** Whether a session that is on no page yet comes before the end of what was read of its list. */
function isOnPages({ sessions, next }: Pick<DeskState, 'sessions' | 'next'>, summary: SessionSummary): boolean {
  const list = listOf(summary);
  return next[list] === null || sessions.some((known) => listOf(known) === list && comesBefore(list, summary, known));
}

/** The sessions and trainees of the library, as far as they were read. */
export const deskState = create<DeskState>()((set, get) => ({
  loaded: false,
  sessions: [],
  trainees: [],
  next: { due: null, done: null, secondLooks: null },
  refresh: async () => {
    const [due, done, secondLooks, trainees] = await Promise.all([
      read('desk.sessions', { list: 'due' }),
      read('desk.sessions', { list: 'done' }),
      read('desk.sessions', { list: 'secondLooks' }),
      read('desk.trainees', {}),
    ]);
    if (due === null || done === null || secondLooks === null || trainees === null) return;
    set({
      loaded: true,
      sessions: newestFirst([...secondLooks.sessions, ...done.sessions, ...due.sessions]),
      trainees,
      next: { due: due.next, done: done.next, secondLooks: secondLooks.next },
    });
  },
  refreshTrainees: async () => {
    const trainees = await read('desk.trainees', {});
    if (trainees !== null) set({ trainees });
  },
  loadMore: async (list) => {
    const after = get().next[list];
    if (after === null) return;
    const page = await read('desk.sessions', { list, after });
    if (page === null || get().next[list] !== after) return;
    set(({ sessions, next }) => ({
      sessions: merged(sessions, page.sessions),
      next: { ...next, [list]: page.next },
    }));
  },
  include: async (sessionId) => {
    if (get().sessions.some(({ id }) => id === sessionId)) return;
    const summary = await read('desk.session', { sessionId });
    if (summary !== null) set(({ sessions }) => ({ sessions: merged(sessions, [summary]) }));
  },
  upsert: (sessionId, summary) =>
    set((state) => {
      if (summary === null || summary.archived)
        return { sessions: state.sessions.filter(({ id }) => id !== sessionId) };
      const isKnown = state.sessions.some(({ id }) => id === sessionId);
      return isKnown || (state.loaded && isOnPages(state, summary))
        ? { sessions: merged(state.sessions, [summary]) }
        : {};
    }),
}));

const waitsForClips = ({ clips }: SessionSummary): number => (clips === 0 ? 1 : 0);

/** What came first comes first, and what waits for its clips last. */
const byArrival = (a: SessionSummary, b: SessionSummary): number =>
  waitsForClips(a) - waitsForClips(b) || a.cameAt.localeCompare(b.cameAt) || a.id.localeCompare(b.id);

/** The sessions with something to do, in the order they are done. */
export const dueInOrder = (sessions: readonly SessionSummary[]): readonly SessionSummary[] =>
  sessions.filter((session) => listOf(session) === 'due').sort(byArrival);

/** Whether a session comes before another one of its list, or stands beside it on the same day. */
const comesBefore = (list: DeskList, a: SessionSummary, b: SessionSummary): boolean =>
  list === 'due' ? byArrival(a, b) <= 0 : a.date >= b.date;
