import type { RimEdges } from './rimEdges.ts';
import type { DiscShape } from './shape.ts';

/** A rim found by votes. `strength`: share of its circumference with an edge along it, 0-1. */
export type FoundRim = DiscShape & { readonly strength: number };

/** How a disc may stand towards the camera: its shortest / longest diameter, and the direction of the longest. */
export type Stance = { readonly axisRatio: number; readonly majorAxisRad: number };

/** Each radius by the one before it; a turned rim is fitted from further off. */
const radiusStep = { round: 1.06, turned: 1.09 } as const;
const leastVotes = 3;
const leastStrength = 0.3;

type Field = { readonly width: number; readonly height: number; readonly votes: Float32Array };

/**
 * Finds rims by their edges: each edge point votes, square to a rim of a stance, for the centres it may belong to at each
 * radius (the voting of Hough's transform for circles, with the gradient's direction: Kimme, Ballard & Sklansky 1975;
 * for an ellipse in the plane in which it is a circle). Radii from 4 % to 30 % of the picture's short side.
 */
export function voteRims(
  { width, height }: { readonly width: number; readonly height: number },
  edges: RimEdges,
  stance: Stance,
): FoundRim[] {
  const found: FoundRim[] = [];
  const shortSide = Math.min(width, height);
  const field = { width, height, votes: new Float32Array(width * height) };
  const steps = stepsToCentre(edges, stance);
  const touched: number[] = [];
  const step = stance.axisRatio === 1 ? radiusStep.round : radiusStep.turned;
  for (let radius = Math.max(5, shortSide * 0.04); radius <= shortSide * 0.3; radius *= step) {
    touched.length = 0;
    vote(field, touched, { edges, steps, radius });
    peaks(field, touched, { stance, radius, found });
    for (const here of touched) field.votes[here] = 0;
  }
  return found;
}

type Steps = { readonly x: Float32Array; readonly y: Float32Array };

/** From each edge point, the step to the centre of a rim of radius one on the brighter side. */
function stepsToCentre({ count, towardX, towardY }: RimEdges, { axisRatio, majorAxisRad }: Stance): Steps {
  if (axisRatio === 1) return { x: towardX, y: towardY };
  const x = new Float32Array(count);
  const y = new Float32Array(count);
  const majorX = Math.cos(majorAxisRad);
  const majorY = Math.sin(majorAxisRad);
  for (let edge = 0; edge < count; edge += 1) {
    const acrossPx = towardX[edge] ?? 0;
    const downPx = towardY[edge] ?? 0;
    const along = acrossPx * majorX + downPx * majorY;
    const over = axisRatio * (downPx * majorX - acrossPx * majorY);
    const size = Math.hypot(along, over);
    const overPx = (over / size) * axisRatio;
    x[edge] = (along / size) * majorX - overPx * majorY;
    y[edge] = (along / size) * majorY + overPx * majorX;
  }
  return { x, y };
}

function vote(
  field: Field,
  touched: number[],
  { edges, steps, radius }: { readonly edges: RimEdges; readonly steps: Steps; readonly radius: number },
): void {
  for (let edge = 0; edge < edges.count; edge += 1) {
    const x = edges.xPx[edge] ?? 0;
    const y = edges.yPx[edge] ?? 0;
    const stepX = (steps.x[edge] ?? 0) * radius;
    const stepY = (steps.y[edge] ?? 0) * radius;
    add(field, touched, x + stepX, y + stepY);
    add(field, touched, x - stepX, y - stepY);
  }
}

function add({ width, height, votes }: Field, touched: number[], x: number, y: number): void {
  const column = Math.floor(x);
  const row = Math.floor(y);
  if (column < 1 || row < 1 || column >= width - 1 || row >= height - 1) return;
  const here = row * width + column;
  const before = votes[here] ?? 0;
  if (before === 0) touched.push(here);
  votes[here] = before + 1;
}

/** Local maxima of the votes within three by three cells, as shares of the circumference. */
function peaks(
  { width, height, votes }: Field,
  touched: readonly number[],
  { stance, radius, found }: { readonly stance: Stance; readonly radius: number; readonly found: FoundRim[] },
): void {
  const circumference = radius * girth(stance.axisRatio);
  const summed = (here: number) => {
    let sum = 0;
    for (let row = here - width; row <= here + width; row += width)
      sum += (votes[row - 1] ?? 0) + (votes[row] ?? 0) + (votes[row + 1] ?? 0);
    return sum;
  };
  const strong: { readonly here: number; readonly strength: number }[] = [];
  for (const here of touched) {
    if ((votes[here] ?? 0) < leastVotes) continue;
    const column = here % width;
    const row = Math.floor(here / width);
    if (column < 2 || row < 2 || column >= width - 2 || row >= height - 2) continue;
    const sum = summed(here);
    // Two pixels of an edge's width vote, so a whole rim gives about twice its circumference.
    const strength = sum / (2 * circumference);
    if (strength < leastStrength) continue;
    if (sum < summed(here - 1) || sum < summed(here + 1) || sum < summed(here - width) || sum < summed(here + width))
      continue;
    strong.push({ here, strength: Math.min(1, strength) });
  }
  strong.sort((one, other) => one.here - other.here);
  for (const { here, strength } of strong) {
    const yPx = Math.floor(here / width) + 0.5;
    found.push({ xPx: (here % width) + 0.5, yPx, radiusPx: radius, ...stance, strength });
  }
}

/** Circumference of an ellipse whose longest half diameter is 1 (Ramanujan 1914, first formula). */
const girth = (axisRatio: number): number =>
  Math.PI * (3 * (1 + axisRatio) - Math.sqrt((3 + axisRatio) * (1 + 3 * axisRatio)));
