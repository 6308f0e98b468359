import { create } from 'zustand';
import type { Settings } from '../../electron/contract/settings.ts';
import { read } from '../bridge/read.ts';
import { statusState } from '../bridge/statusState.ts';
import { saySettings } from '../words/saySettings.ts';

type SettingsState = {
  /** null until the backend has answered for the first time. */
  readonly settings: Settings | null;
  readonly refresh: () => Promise<void>;
};

/** What is set for the whole library. */
export const settingsState = create<SettingsState>()((set, get) => ({
  settings: null,
  refresh: async () => {
    const isFirst = get().settings === null;
    const settings = await read('settings.get', {});
    if (settings !== null) set({ settings });
    if (isFirst && settings !== null && (await read('settings.damaged', {})) === true) {
      statusState.getState().tell(saySettings('damaged'));
    }
  },
}));
