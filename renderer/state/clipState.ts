import { create } from 'zustand';
import type { Result } from '../../electron/contract/requests.ts';
import type { Recording } from '../../engine/recording/recording.ts';
import { read } from '../bridge/read.ts';
import { oneReadAtATime } from './oneReadAtATime.ts';

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

export type ClipMeasures = Result<'measures.get'>;

type MeasuresState = {
  /** The clip that the rest is about. */
  readonly clipId: string | null;
  /** Null until they have been read. */
  readonly measures: ClipMeasures | null;
  readonly recording: Recording | null;
  /** Reads the measures of a clip, and its recording where that is another one. */
  readonly load: (clipId: string) => Promise<void>;
  /** Reads them again for the same clip. */
  readonly refresh: () => Promise<void>;
  readonly close: () => void;
};

const closed = { clipId: null, measures: null, recording: null };

/** The parts of a measurement that its curves follow from. */
const foundation = ({ measurement, recordedAt, setUp }: ClipMeasures): string =>
  JSON.stringify([recordedAt, setUp, measurement?.calibration, measurement?.reps, measurement?.warnings]);

/** The measurement read before is kept where the new one says the same, so that curves are not drawn anew. */
function sameMeasurement(before: ClipMeasures | null, now: ClipMeasures): ClipMeasures {
  if (before === null || foundation(before) !== foundation(now)) return now;
  return { ...now, measurement: before.measurement };
}

/** What was measured of the clip on the stage. */
export const measuresState = create<MeasuresState>()((set, get) => {
  async function readOnce(): Promise<void> {
    const { clipId } = get();
    if (clipId === null) return;
    const answer = await read('measures.get', { clipId });
    if (answer === null || get().clipId !== clipId) return;
    const before = get().measures;
    if (answer.recordedAt === null) set({ measures: answer, recording: null });
    else if (answer.recordedAt === before?.recordedAt && get().recording !== null) {
      set({ measures: sameMeasurement(before, answer) });
    } else {
      const recorded = await read('measures.recording', { clipId });
      if (get().clipId === clipId) set({ measures: answer, recording: recorded?.recording ?? null });
    }
  }

  const refresh = oneReadAtATime(readOnce);
  return {
    ...closed,
    load: async (clipId) => {
      if (get().clipId !== clipId) set({ ...closed, clipId });
      await refresh();
    },
    refresh,
    close: () => set(closed),
  };
});
