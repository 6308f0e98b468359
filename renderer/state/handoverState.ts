import { create } from 'zustand';
import type { Result } from '../../electron/contract/requests.ts';
import { read } from '../bridge/read.ts';

export type SessionToHandOver = Result<'handover.sessions'>[number];
export type HandedOver = Result<'handover.list'>;

type HandoverState = {
  /** null until they have been read. */
  readonly sessions: readonly SessionToHandOver[] | null;
  /** What was handed over of the sessions that were asked for. */
  readonly handed: Readonly<Record<string, HandedOver>>;
  /** Jobs that were started while the window is open, the newest last. */
  readonly started: readonly string[];
  readonly refresh: () => Promise<void>;
  readonly readHanded: (sessionId: string) => Promise<void>;
  readonly took: (jobIds: readonly string[]) => void;
};

/** What can be handed over, and what was. */
export const handoverState = create<HandoverState>()((set) => ({
  sessions: null,
  handed: {},
  started: [],
  refresh: async () => {
    const sessions = await read('handover.sessions', {});
    if (sessions !== null) set({ sessions });
  },
  readHanded: async (sessionId) => {
    const list = await read('handover.list', { sessionId });
    if (list !== null) set(({ handed }) => ({ handed: { ...handed, [sessionId]: list } }));
  },
  took: (jobIds) => set(({ started }) => ({ started: [...started, ...jobIds] })),
}));
