import { create } from 'zustand';
import type { Result } from '../../electron/contract/requests.ts';
import { read } from '../bridge/read.ts';

export type ClipTables = Result<'clips.frameTable'>;

type TablesState = {
  readonly tables: Readonly<Record<string, ClipTables>>;
  readonly load: (clipId: string) => Promise<ClipTables | null>;
};

/** Frame tables by clip: they never change once a clip has been read. */
export const tablesState = create<TablesState>()((set, get) => ({
  tables: {},
  load: async (clipId) => {
    const known = get().tables[clipId];
    if (known !== undefined) return known;
    const tables = await read('clips.frameTable', { clipId });
    if (tables !== null) set((state) => ({ tables: { ...state.tables, [clipId]: tables } }));
    return tables;
  },
}));
