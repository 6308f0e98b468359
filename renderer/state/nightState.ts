import { create } from 'zustand';
import type { Result } from '../../electron/contract/requests.ts';
import { read } from '../bridge/read.ts';
import { oneReadAtATime } from './oneReadAtATime.ts';

type Left = Result<'night.left'>;

type NightState = {
  /** null until it was read. */
  readonly left: Left | null;
  readonly refresh: () => Promise<void>;
};

/** How much is left to do, over all sessions. */
export const nightState = create<NightState>()((set) => ({
  left: null,
  refresh: oneReadAtATime(async () => {
    const left = await read('night.left', {});
    if (left !== null) set({ left });
  }),
}));
