import type { JudgedMoment } from '../../engine/agreement/compareReviews.ts';
import type { Review } from '../../engine/review/review.ts';
import type { Moment } from '../../engine/time/moment.ts';

const frameOf = (moment: Moment | undefined): number | null =>
  moment !== undefined && 'frame' in moment ? moment.frame : null;

/**
 * The frame to show of a judged moment: that of the first flag on its criterion set within its rep, else the start of the
 * rep, else the clip's first frame. A flag on several reps was set in one of them, which need not be this one.
 * @param review the judgement whose clips the moment names
 */
export function frameOfMoment(review: Review, { clip: clipId, criterion, rep }: JudgedMoment): number {
  const entry = review.entries.find(({ clips }) => clips.some(({ id }) => id === clipId));
  const reps = entry?.clips.find(({ id }) => id === clipId)?.reps ?? [];
  const start = frameOf(reps.find(({ index }) => index === rep)?.start) ?? 0;
  const starts = reps.flatMap((one) => frameOf(one.start) ?? []);
  const end = rep === null ? Number.POSITIVE_INFINITY : Math.min(...starts.filter((frame) => frame > start));
  const flags = entry?.flags.filter((flag) => flag.clip === clipId && flag.criterion === criterion) ?? [];
  const within = flags
    .flatMap((flag) => frameOf(flag.at) ?? [])
    .filter((frame) => frame >= start && frame < end)
    .sort((a, b) => a - b);
  return within[0] ?? start;
}
