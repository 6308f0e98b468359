import { create } from 'zustand';
import type { Settings } from '../../electron/contract/settings.ts';
import { read } from '../bridge/read.ts';

type SettingsState = {
  /** null until the backend has answered for the first time. */
  readonly settings: Settings | null;
  readonly refresh: () => Promise<void>;
};

/** What is set for the whole library. */
export const settingsState = create<SettingsState>()((set) => ({
  settings: null,
  refresh: async () => {
    const settings = await read('settings.get', {});
    if (settings !== null) set({ settings });
  },
}));
