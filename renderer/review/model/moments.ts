import { toldFrame, toldUs } from '../../../engine/framing/toldTime.ts';
import { momentUsInClip } from '../../../engine/review/parts.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { frameStartUs, nearestFrame } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { Moment } from '../../../engine/time/moment.ts';
import { clock } from '../../base/figures.ts';
import { sayScorecard } from '../../words/sayScorecard.ts';

/** The frame nearest to media seconds counted from the clip's first frame, as measures count them. */
export const frameAtSeconds = (seconds: number, table: FrameTable): number =>
  nearestFrame(table, frameStartUs(table, 0) + Math.round(seconds * 1_000_000));

/** Media seconds of a frame from the clip's first frame. */
export const secondsOfFrame = (frame: number, table: FrameTable): number =>
  (frameStartUs(table, Math.min(Math.max(0, frame), table.ticks.length - 1)) - frameStartUs(table, 0)) / 1_000_000;

/** A moment as a clock, "0:07.133", as the desk's language writes it; its frame where the clip's times are not known. */
export function momentWords(moment: Moment, clip: Clip): string {
  const us = momentUsInClip(moment, clip);
  if (us !== null) return clock(toldUs(clip, us, clip.facts?.timeBase));
  return 'frame' in moment ? sayScorecard('frame', { frame: toldFrame(clip, moment.frame) }) : '';
}
