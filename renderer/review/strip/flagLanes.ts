/** A mark along the strip: the middle of it and how wide it is, both as shares of the strip's length. */
export type StripMark = { readonly place: number; readonly width: number };

/** The most lanes a strip has room for; more marks than that at one place share the last. */
const mostLanes = 3;

const clears = (mark: StripMark, last: StripMark): boolean => mark.place - last.place >= (mark.width + last.width) / 2;

/** A lane for each mark, so that neighbours' strokes never run together and read as one: the first lane with room. */
export function flagLanes(marks: readonly StripMark[]): readonly number[] {
  const lastInLane: StripMark[] = [];
  const lanes = marks.map(() => 0);
  const inOrder = marks.map((mark, index) => ({ mark, index })).sort((a, b) => a.mark.place - b.mark.place);
  for (const { mark, index } of inOrder) {
    const free = lastInLane.findIndex((last) => clears(mark, last));
    const lane = Math.min(free === -1 ? lastInLane.length : free, mostLanes - 1);
    lastInLane[lane] = mark;
    lanes[index] = lane;
  }
  return lanes;
}
