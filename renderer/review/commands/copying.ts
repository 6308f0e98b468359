import { clipOf, entryOfClip } from '../../../engine/review/parts.ts';
import type { Clip, Entry, Flag, Review } from '../../../engine/review/review.ts';
import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { tablesState } from '../../state/clipState.ts';
import type { Column } from '../../state/cursorState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { copiedFrame } from '../model/copiedMoment.ts';
import type { ReviewContext } from './reviewContext.ts';

/** A clip that a flag can be copied to, with the exercise it is of. */
export type CopyTarget = { readonly entry: Entry; readonly clip: Clip };

/** The clips whose exercise is judged by a flag's criterion, and whose frames are known; the flag's own clip first. */
export function copyTargets({ data, stage }: Pick<ReviewContext, 'data' | 'stage'>, flag: Flag): readonly CopyTarget[] {
  if (data === null || stage === null) return [];
  const isJudged = ({ exercise }: Entry): boolean =>
    stage.catalogue.exercises.find(({ id }) => id === exercise)?.criteria.some(({ id }) => id === flag.criterion) ===
    true;
  const isReady = ({ id }: Clip): boolean => data.media.some(({ clipId, ready }) => clipId === id && ready);
  const all = data.review.entries.flatMap((entry) =>
    isJudged(entry) ? entry.clips.filter(isReady).map((clip) => ({ entry, clip })) : [],
  );
  return [...all.filter(({ clip }) => clip.id === flag.clip), ...all.filter(({ clip }) => clip.id !== flag.clip)];
}

/** Copies a flag to other columns, in one act; says how many. False where it was not saved. */
export async function copyFlag(review: Review, flag: Flag, to: readonly Column[]): Promise<boolean> {
  const timed = async (clipId: string) => {
    const entry = entryOfClip(review, clipId);
    const clip = entry && clipOf(entry, clipId);
    const tables = await tablesState.getState().load(clipId);
    return clip === undefined || tables === null ? null : { clip, table: tables.table };
  };
  const from = await timed(flag.clip);
  if (from === null) return false;
  const places = [];
  for (const { clipId, rep } of to) {
    const target = await timed(clipId);
    if (target === null) return false;
    const reps: 'set' | number[] = rep === 'set' ? 'set' : [rep];
    places.push({ clipId, reps, frame: copiedFrame(flag, from, { ...target, rep }) });
  }
  if ((await mutate('flags.copy', { flagId: flag.id, to: places })) === null) return false;
  statusState.getState().say(sayFlags('copied', { count: places.length }));
  await reviewState.getState().refresh();
  return true;
}
