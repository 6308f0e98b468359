import { create } from 'zustand';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { NamedTrainee } from '../../electron/contract/trainees.ts';
import { read } from '../bridge/read.ts';

/** The lists that the desk shows, a page at a time. */
export type DeskList = 'desk' | 'secondLooks';

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

const listOf = ({ secondLookOf }: SessionSummary): DeskList => (secondLookOf === null ? 'desk' : 'secondLooks');

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
  return next[list] === null || sessions.some((known) => listOf(known) === list && isDueBefore(summary, known));
}

/** The sessions and trainees of the library, as far as they were read. */
export const deskState = create<DeskState>()((set, get) => ({
  loaded: false,
  sessions: [],
  trainees: [],
  next: { desk: null, secondLooks: null },
  refresh: async () => {
    const [desk, secondLooks, trainees] = await Promise.all([
      read('desk.sessions', { list: 'desk' }),
      read('desk.sessions', { list: 'secondLooks' }),
      read('desk.trainees', {}),
    ]);
    if (desk === null || secondLooks === null || trainees === null) return;
    set({
      loaded: true,
      sessions: newestFirst([...secondLooks.sessions, ...desk.sessions]),
      trainees,
      next: { desk: desk.next, secondLooks: secondLooks.next },
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
      if (summary === null) return { sessions: state.sessions.filter(({ id }) => id !== sessionId) };
      const isKnown = state.sessions.some(({ id }) => id === sessionId);
      return isKnown || (state.loaded && isOnPages(state, summary))
        ? { sessions: merged(state.sessions, [summary]) }
        : {};
    }),
}));

const isDue = (session: SessionSummary): number => (session.mark === '' || session.provisional ? 0 : 1);

/** Sessions still without a whole grade come first, since they are what is due; within each, the most recent first. */
export function dueFirst(sessions: readonly SessionSummary[]): readonly SessionSummary[] {
  return [...sessions].sort(
    (a, b) => isDue(a) - isDue(b) || b.date.localeCompare(a.date) || a.traineeName.localeCompare(b.traineeName),
  );
}

/** Whether a session comes before another one, or stands beside it on the same day. */
const isDueBefore = (a: SessionSummary, b: SessionSummary): boolean =>
  isDue(a) < isDue(b) || (isDue(a) === isDue(b) && a.date >= b.date);
