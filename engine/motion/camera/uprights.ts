import type { Upright } from '../../recording/recording.ts';
import { type GreyPicture, shrink } from '../picture/picture.ts';

/** Long side of the picture that lines are looked for in. */
const longSide = 960;
const largestLeanDeg = 12;
const leanStepDeg = 0.5;
const leastSlope = 24;
/** A line counts from this share of the picture's height on. */
const leastLengthShare = 0.18;
const mostLines = 24;

/**
 * Finds straight lines that stand nearly upright in a picture: posts, door frames, panels. By voting for lean and place
 * (Hough's transform; Duda & Hart 1972) with the edge's own direction, each then fitted to its edge points. Longest first.
 */
export function uprightsOf(picture: GreyPicture): Upright[] {
  const factor = Math.max(1, Math.max(picture.width, picture.height) / longSide);
  const small = shrink(picture, factor);
  const edges = uprightEdges(small);
  const lines: Upright[] = [];
  const used = new Uint8Array(edges.length);
  const votes = new Votes(small);
  edges.forEach((edge) => {
    votes.add(edge, 1);
  });
  while (lines.length < mostLines) {
    const best = votes.highest();
    if (best.count < leastLengthShare * small.height) break;
    const own = edges.flatMap((edge, index) => (used[index] === 0 && best.missPx(edge) < 2 ? [index] : []));
    for (const index of own) {
      const edge = edges[index];
      if (edge) votes.add(edge, -1);
      used[index] = 1;
    }
    const line = fitted(own.flatMap((index) => edges[index] ?? []));
    if (own.length === 0) break;
    if (!line || line.lengthPx < leastLengthShare * small.height) continue;
    lines.push({
      xPx: line.xPx * factor,
      yPx: line.yPx * factor,
      leanDeg: line.leanDeg,
      lengthPx: line.lengthPx * factor,
    });
  }
  return lines.sort((one, other) => other.lengthPx - one.lengthPx);
}

type Edge = { readonly x: number; readonly y: number; readonly leanDeg: number };

/** Edge points that are the strongest of their row's neighbours, with the lean their gradient tells; + = its top to the right. */
function uprightEdges({ width, height, data }: GreyPicture): Edge[] {
  const edges: Edge[] = [];
  const steepest = Math.tan((largestLeanDeg * Math.PI) / 180);
  const slopeAt = (here: number) =>
    (data[here + 1 - width] ?? 0) +
    2 * (data[here + 1] ?? 0) +
    (data[here + 1 + width] ?? 0) -
    (data[here - 1 - width] ?? 0) -
    2 * (data[here - 1] ?? 0) -
    (data[here - 1 + width] ?? 0);
  for (let row = 1; row < height - 1; row += 1) {
    for (let column = 2; column < width - 2; column += 1) {
      const here = row * width + column;
      const across = slopeAt(here);
      const size = Math.abs(across);
      if (size < leastSlope) continue;
      const before = Math.abs(slopeAt(here - 1));
      const after = Math.abs(slopeAt(here + 1));
      if (size < before || size <= after) continue;
      const down =
        (data[here + width - 1] ?? 0) +
        2 * (data[here + width] ?? 0) +
        (data[here + width + 1] ?? 0) -
        (data[here - width - 1] ?? 0) -
        2 * (data[here - width] ?? 0) -
        (data[here - width + 1] ?? 0);
      const ratio = down / across;
      if (Math.abs(ratio) > steepest) continue;
      const bend = before - 2 * size + after;
      const offset = bend < 0 ? (0.5 * (before - after)) / bend : 0;
      edges.push({ x: column + 0.5 + offset, y: row + 0.5, leanDeg: (Math.atan(ratio) * 180) / Math.PI });
    }
  }
  return edges;
}

/** Votes for lean and for the place at half the picture's height. */
class Votes {
  readonly #counts: Int32Array;
  readonly #columns: number;
  readonly #middle: number;
  readonly #leans = Math.round((2 * largestLeanDeg) / leanStepDeg) + 1;
  readonly #margin: number;

  constructor({ width, height }: { readonly width: number; readonly height: number }) {
    this.#middle = height / 2;
    this.#margin = Math.ceil(Math.tan((largestLeanDeg * Math.PI) / 180) * this.#middle);
    this.#columns = width + 2 * this.#margin;
    this.#counts = new Int32Array(this.#leans * this.#columns);
  }

  /** An edge votes for the leans within two degrees of its own. */
  add({ x, y, leanDeg }: Edge, weight: 1 | -1): void {
    const own = Math.round((leanDeg + largestLeanDeg) / leanStepDeg);
    for (let lean = Math.max(0, own - 4); lean <= Math.min(this.#leans - 1, own + 4); lean += 1) {
      const column = Math.floor(this.#placeOf(x, y, lean) + this.#margin);
      if (column < 0 || column >= this.#columns) continue;
      const at = lean * this.#columns + column;
      this.#counts[at] = (this.#counts[at] ?? 0) + weight;
    }
  }

  #placeOf(x: number, y: number, lean: number): number {
    return x + (y - this.#middle) * Math.tan(((lean * leanStepDeg - largestLeanDeg) * Math.PI) / 180);
  }

  highest(): { readonly count: number; readonly missPx: (edge: Edge) => number } {
    let best = 0;
    for (let at = 1; at < this.#counts.length; at += 1)
      if ((this.#counts[at] ?? 0) > (this.#counts[best] ?? 0)) best = at;
    const lean = Math.floor(best / this.#columns);
    const place = (best % this.#columns) + 0.5 - this.#margin;
    return { count: this.#counts[best] ?? 0, missPx: ({ x, y }) => Math.abs(this.#placeOf(x, y, lean) - place) };
  }
}

/** The straight line through edge points by least squares of x on y; its length by how many rows it has. */
function fitted(edges: readonly Edge[]): Upright | null {
  if (edges.length < 8) return null;
  const meanX = edges.reduce((sum, { x }) => sum + x, 0) / edges.length;
  const meanY = edges.reduce((sum, { y }) => sum + y, 0) / edges.length;
  const spread = edges.reduce((sum, { y }) => sum + (y - meanY) ** 2, 0);
  const along = edges.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0);
  if (spread === 0) return null;
  const rows = new Set(edges.map(({ y }) => y)).size;
  return { xPx: meanX, yPx: meanY, leanDeg: (-Math.atan(along / spread) * 180) / Math.PI, lengthPx: rows };
}
