import type { Drawn } from '../review/drawings/drawing.ts';
import type { Look, NarrationTrack } from './narration.ts';

/** What is on screen at a time of a narration. */
export type ShownThen = { readonly frame: number; readonly look: Look };

/** The last of a list whose time is not after `us`; the first before all of them. Times never fall. */
function lastUntil(count: number, us: number, atUs: (index: number) => number): number {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (atUs(middle) <= us) low = middle;
    else high = middle - 1;
  }
  return low;
}

const frameIndexAt = ({ frames }: NarrationTrack, us: number): number =>
  lastUntil(frames.length, us, (index) => frames[index]?.[0] ?? 0);

/** What is on screen at a time of the sound, in microseconds. Throws a RangeError for a track without pictures. */
export function shownAt(track: NarrationTrack, us: number): ShownThen {
  const shown = track.frames[frameIndexAt(track, us)];
  const look = track.looks[lastUntil(track.looks.length, us, (index) => track.looks[index]?.atUs ?? 0)];
  if (shown === undefined || look === undefined) throw new RangeError('The narration shows nothing.');
  return { frame: shown[1], look };
}

/** The shapes of a look. */
export const shapesOf = ({ shapes }: NarrationTrack, { drawn }: Look): readonly Drawn[] =>
  drawn.flatMap((index) => shapes[index] ?? []);

/** The next frames to come on screen from a time on, that time's own first; each once, at most `most`. */
export function framesAhead(track: NarrationTrack, us: number, most: number): readonly number[] {
  const ahead = new Set<number>();
  for (let index = frameIndexAt(track, us); index < track.frames.length && ahead.size < most; index += 1) {
    const shown = track.frames[index];
    if (shown !== undefined) ahead.add(shown[1]);
  }
  return [...ahead];
}
