import type { Box, Cover, CoverPlace } from './cover.ts';

/** Where a cover is at a frame; null outside of its frames. */
export function boxAt({ firstFrame, lastFrame, places }: Cover, frame: number): Box | null {
  if (frame < firstFrame || frame > lastFrame) return null;
  const next = placesBefore(places, frame);
  const [before, after] = [places[next - 1], places[next]];
  if (before === undefined || after === undefined) return (before ?? after)?.box ?? null;
  const share = (frame - before.frame) / (after.frame - before.frame);
  const between = (key: keyof Box) => before.box[key] + share * (after.box[key] - before.box[key]);
  return {
    leftPx: between('leftPx'),
    topPx: between('topPx'),
    widthPx: between('widthPx'),
    heightPx: between('heightPx'),
  };
}

/** How many of rising places lie at a frame or before it: a head's cover has one in every frame of a long clip. */
function placesBefore(places: readonly CoverPlace[], frame: number): number {
  let [low, high] = [0, places.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((places[middle]?.frame ?? frame) <= frame) low = middle + 1;
    else high = middle;
  }
  return low;
}
