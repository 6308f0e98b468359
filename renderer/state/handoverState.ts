import { create } from 'zustand';
import type { Result } from '../../electron/contract/requests.ts';
import { read } from '../bridge/read.ts';

type Page = Result<'handover.sessions'>;
export type SessionToHandOver = Page['sessions'][number] & { readonly sessionId: string };
export type HandedOver = Result<'handover.list'>;

type HandoverState = {
  /** null until they have been read. */
  readonly sessions: readonly SessionToHandOver[] | null;
  /** Where the list goes on; null when all of it was read. */
  readonly next: string | null;
  /** What was handed over of the sessions that were asked for. */
  readonly handed: Readonly<Record<string, HandedOver>>;
  /** Jobs that were started while the window is open, the newest last. */
  readonly started: readonly string[];
  readonly refresh: () => Promise<void>;
  readonly loadMore: () => Promise<void>;
  /** Reads a session that may be on no page yet. */
  readonly include: (sessionId: string) => Promise<void>;
  readonly readHanded: (sessionId: string) => Promise<void>;
  readonly addStarted: (jobIds: readonly string[]) => void;
};

const rowOf = (row: Page['sessions'][number]): SessionToHandOver => ({ ...row, sessionId: row.session.id });

/** Adds rows to those known; what is read later counts, where it was. */
function merged(known: readonly SessionToHandOver[], read: readonly SessionToHandOver[]): readonly SessionToHandOver[] {
  const rows = new Map([...known, ...read].map((row) => [row.sessionId, row]));
  return [...rows.values()];
}

/** What can be handed over, and what was. */
export const handoverState = create<HandoverState>()((set, get) => ({
  sessions: null,
  next: null,
  handed: {},
  started: [],
  refresh: async () => {
    const page = await read('handover.sessions', {});
    if (page !== null) set({ sessions: page.sessions.map(rowOf), next: page.next });
  },
  loadMore: async () => {
    const { next: after } = get();
    if (after === null) return;
    const page = await read('handover.sessions', { after });
    if (page === null || get().next !== after) return;
    set(({ sessions }) => ({ sessions: merged(sessions ?? [], page.sessions.map(rowOf)), next: page.next }));
  },
  include: async (sessionId) => {
    if (get().sessions?.some((row) => row.sessionId === sessionId)) return;
    const row = await read('handover.session', { sessionId });
    if (row !== null) set(({ sessions }) => ({ sessions: merged(sessions ?? [], [rowOf(row)]) }));
  },
  readHanded: async (sessionId) => {
    const list = await read('handover.list', { sessionId });
    if (list !== null) set(({ handed }) => ({ handed: { ...handed, [sessionId]: list } }));
  },
  addStarted: (jobIds) => set(({ started }) => ({ started: [...started, ...jobIds] })),
}));
