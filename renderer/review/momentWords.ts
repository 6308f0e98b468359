import { momentUsInClip } from '../../engine/review/moments.ts';
import type { Clip } from '../../engine/review/review.ts';
import { formatClock } from '../../engine/time/clock.ts';
import type { Moment } from '../../engine/time/moment.ts';

/** A moment as a clock, "0:07.133"; its frame where the clip's times are not known. */
export function momentWords(moment: Moment, clip: Clip): string {
  const us = momentUsInClip(moment, clip);
  if (us !== null) return formatClock(us);
  return 'frame' in moment ? `frame ${moment.frame}` : '';
}
