import type { Clip } from '../../engine/review/review.ts';
import { read } from '../bridge/read.ts';
import { type ClipTables, tablesState } from '../state/clipState.ts';

/** One side of the comparison: a clip that can be played, and the rep that is laid beside the other. */
export type Side = { readonly clip: Clip; readonly tables: ClipTables; readonly rep: number };

/** Loads a clip of a session with its times; null when it can't be shown or has no reps marked. */
export async function loadSide(sessionId: string, clipId: string, rep: number | null): Promise<Side | null> {
  const answer = await read('review.get', { sessionId });
  const clip = answer?.review.entries.flatMap((entry) => entry.clips).find((one) => one.id === clipId);
  const tables = await tablesState.getState().load(clipId);
  const [first] = clip?.reps ?? [];
  if (clip === undefined || tables === null || first === undefined) return null;
  const wanted = clip.reps.some(({ index }) => index === rep) ? rep : null;
  return { clip, tables, rep: wanted ?? first.index };
}
