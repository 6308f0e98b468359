/** A mark along the strip: its middle and its width, as shares of the strip's length. */
export type StripMark = { readonly position: number; readonly width: number };

/** The most lanes a strip has room for; more marks than that at one position share the last. */
const mostLanes = 3;

const clears = (mark: StripMark, last: StripMark): boolean =>
  mark.position - last.position >= (mark.width + last.width) / 2;

/** Gives each mark the first lane with room, so that neighbouring strokes never run together. */
export function flagLanes(marks: readonly StripMark[]): readonly number[] {
  const lastInLane: StripMark[] = [];
  const lanes = marks.map(() => 0);
  const inOrder = marks.map((mark, index) => ({ mark, index })).sort((a, b) => a.mark.position - b.mark.position);
  for (const { mark, index } of inOrder) {
    const free = lastInLane.findIndex((last) => clears(mark, last));
    const lane = Math.min(free === -1 ? lastInLane.length : free, mostLanes - 1);
    lastInLane[lane] = mark;
    lanes[index] = lane;
  }
  return lanes;
}
