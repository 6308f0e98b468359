import type { Clip } from '../../../engine/review/review.ts';
import { frameAtUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { type Moment, ticksToUs } from '../../../engine/time/moment.ts';
import { ProblemError } from '../../contract/reply.ts';

/**
 * A moment of a review as a frame of the footage it was made on: seconds become the frame showing then. Without a
 * frame table it stays as it is. Throws `bad-review` when it does not lie in the footage.
 */
export function momentInFootage(moment: Moment, table: FrameTable | undefined, clip: Clip): Moment {
  if (!table) return moment;
  if ('frame' in moment) {
    if (table.ticks[moment.frame] === moment.ticks) return moment;
    throw misplaced(clip, `frame ${moment.frame} at ${moment.ticks} ticks`);
  }
  const us = Math.round(moment.seconds * 1_000_000);
  if (us > ticksToUs(table.endTicks, table.timeBase)) throw misplaced(clip, `${moment.seconds.toFixed(3)} s`);
  const frame = frameAtUs(table, us);
  const ticks = table.ticks[frame];
  if (ticks === undefined) throw misplaced(clip, `frame ${frame}`);
  return { frame, ticks };
}

function misplaced(clip: Clip, moment: string): ProblemError {
  return new ProblemError(
    'bad-review',
    `The review speaks of ${moment} in clip "${clip.name.slice(0, 60)}", which its footage does not have, ` +
      'so the session was left out; check that it is the footage the review was made on.',
  );
}
