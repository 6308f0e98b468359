import { create } from 'zustand';
import type { Result } from '../../electron/contract/requests.ts';
import { read } from '../bridge/read.ts';
import { keptWhereSame } from './keptWhereSame.ts';
import { oneReadAtATime } from './oneReadAtATime.ts';

type InboxState = {
  /** How many files lie in it; null until that was read. */
  readonly count: number | null;
  /** What lies in it; null until that was read. */
  readonly inbox: Result<'inbox.get'> | null;
  readonly refreshCount: () => Promise<void>;
  readonly refresh: () => Promise<void>;
};

/** What came in and belongs to no session yet. */
export const inboxState = create<InboxState>()((set) => ({
  count: null,
  inbox: null,
  refreshCount: oneReadAtATime(async () => {
    const counted = await read('inbox.count', {});
    if (counted !== null) set({ count: counted.files });
  }),
  refresh: oneReadAtATime(async () => {
    const inbox = await read('inbox.get', {});
    if (inbox === null) return;
    set(({ inbox: before }) => ({
      inbox: {
        ...inbox,
        files: keptWhereSame(before?.files ?? [], inbox.files, ({ arrivalId }) => arrivalId),
        sessions: keptWhereSame(before?.sessions ?? [], inbox.sessions, ({ id }) => id),
      },
      count: inbox.files.length + inbox.more,
    }));
  }),
}));
