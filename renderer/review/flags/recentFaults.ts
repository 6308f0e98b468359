import { create } from 'zustand';

type RecentFaults = {
  /** Fault ids, the last used first. */
  readonly ids: readonly string[];
  readonly used: (faultId: string) => void;
};

const most = 40;

/** The faults that were named lately: they stand first in the list. */
export const recentFaults = create<RecentFaults>()((set) => ({
  ids: [],
  used: (faultId) => set(({ ids }) => ({ ids: [faultId, ...ids.filter((id) => id !== faultId)].slice(0, most) })),
}));
