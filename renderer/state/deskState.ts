import { create } from 'zustand';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { NamedTrainee } from '../../electron/contract/trainees.ts';
import { read } from '../bridge/read.ts';

type DeskState = {
  readonly loaded: boolean;
  readonly sessions: readonly SessionSummary[];
  readonly trainees: readonly NamedTrainee[];
  readonly refresh: () => Promise<void>;
};

/** All sessions and trainees of the library. */
export const deskState = create<DeskState>()((set) => ({
  loaded: false,
  sessions: [],
  trainees: [],
  refresh: async () => {
    const desk = await read('desk.get', {});
    if (desk !== null) set({ loaded: true, sessions: desk.sessions, trainees: desk.trainees });
  },
}));
