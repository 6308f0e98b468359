import { type Moment, momentUs } from '../time/moment.ts';
import type { Clip } from './review.ts';

/** A moment of a clip as media microseconds; null where the clip's facts are not known. */
export function momentUsInClip(moment: Moment, clip: Clip): number | null {
  return momentUs(moment, clip.facts?.timeBase);
}

/** Below 0: `a` is earlier; above 0: later; null: they can't be compared (a frame and seconds, without facts). */
export function compareMoments(a: Moment, b: Moment, clip: Clip): number | null {
  if ('ticks' in a && 'ticks' in b) return a.ticks - b.ticks || a.frame - b.frame;
  const aUs = momentUsInClip(a, clip);
  const bUs = momentUsInClip(b, clip);
  return aUs === null || bUs === null ? null : aUs - bUs;
}
