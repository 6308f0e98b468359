import { toldUsOfFrame, toldUsOfSeconds } from '../../engine/framing/toldTime.ts';
import type { Clip } from '../../engine/review/review.ts';
import type { FrameTable } from '../../engine/time/frameTable.ts';
import { clock } from '../base/figures.ts';

/** When a frame appears by the clip's clock, which begins with its section, as the desk's language writes it. */
export const clipClock = (clip: Pick<Clip, 'section'>, table: FrameTable, frame: number): string =>
  clock(toldUsOfFrame(clip, table, frame));

/** Seconds since the footage's first frame, as measures have them, by the clip's clock. */
export const clipClockOfSeconds = (clip: Pick<Clip, 'section'>, table: FrameTable, seconds: number): string =>
  clock(toldUsOfSeconds(clip, table, seconds));
