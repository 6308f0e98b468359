import { solveSymmetric } from './cholesky.ts';
import { type Pose, type RoomPoint, seenAtFirst, turnedBy } from './pose.ts';
import { fillSight, newSight, ofPose, type Sight, type TurnedPose, turned } from './sight.ts';

/**
 * Places of the same patches in one picture: x and y of each patch, one after the other, in pixels from the picture's middle;
 * NaN where it was not found.
 */
export type View = Float64Array;

/** What is usual before anything is seen, as standard deviations: weak, so that they only tell what the views can't. */
const usual = { turn: 1, shift: 0.05, zoom: 0.002, zoomed: 0.03, nearness: 0.5, logFocal: 0.15 } as const;
/** How exactly a patch is found again: what the above are weighed against, in pixels. */
const foundPx = 0.1;
const damping = 1e-3;
/** Lower things are usually nearer: by so much a focal length below the middle. */
const nearerBelow = 0.5;
const leastNearness = 0.02;

/**
 * The camera's poses, the room's points and the focal length, brought nearer to what the views show by one step of Gauss and
 * Newton after another. The points are taken out of each step's equations first (Schur's complement; Triggs et al. 1999).
 */
export class Adjustment {
  readonly #views: readonly View[];
  readonly #startFocalPx: number;
  #focalPx: number;
  readonly #poses: Pose[];
  readonly #points: RoomPoint[];
  readonly #zoomed: readonly number[];
  #turned: readonly TurnedPose[];
  readonly #sight = newSight();

  constructor(
    views: readonly View[],
    { poses, focalPx }: { readonly poses: readonly Pose[]; readonly focalPx: number },
  ) {
    this.#views = views.map((view) => Float64Array.from(view));
    this.#startFocalPx = focalPx;
    this.#focalPx = focalPx;
    this.#poses = [...poses];
    this.#zoomed = poses.map(({ zoom }) => zoom);
    this.#turned = this.#poses.map(turned);
    this.#points = Array.from({ length: (views[0]?.length ?? 0) / 2 }, (_, point) => this.#startOf(point));
  }

  get focalPx(): number {
    return this.#focalPx;
  }

  get poses(): readonly Pose[] {
    return this.#poses;
  }

  get points(): readonly RoomPoint[] {
    return this.#points;
  }

  /** Forgets points that are of no use. */
  leaveOut(isUseless: (point: number) => boolean): void {
    this.#points.forEach((_, point) => {
      if (!isUseless(point)) return;
      for (const places of this.#views) places[2 * point] = Number.NaN;
    });
  }

  /** Visits what is left at each place of a point that is seen; what is handed over is filled anew for the next. */
  eachSight(point: number, reachPx: number, visit: (sight: Sight, view: number) => void): void {
    const at = this.#points[point];
    if (!at) return;
    this.#views.forEach((places, view) => {
      const [xPx = Number.NaN, yPx = Number.NaN] = [places[2 * point], places[2 * point + 1]];
      const pose = this.#turned[view];
      if (!pose || Number.isNaN(xPx)) return;
      fillSight(this.#sight, pose, at, { focalPx: this.#focalPx, xPx, yPx, reachPx });
      visit(this.#sight, view);
    });
  }

  #startOf(point: number): RoomPoint {
    const view = this.#views.findIndex((places) => !Number.isNaN(places[2 * point] ?? Number.NaN));
    const pose = this.#poses[view];
    if (!pose) return { x: 0, y: 0, nearness: 1 };
    const x = (this.#views[view]?.[2 * point] ?? 0) / this.#focalPx;
    const y = (this.#views[view]?.[2 * point + 1] ?? 0) / this.#focalPx;
    const nearness = Math.max(leastNearness, 1 + nearerBelow * y);
    return { ...seenAtFirst(pose, { x, y }, nearness), nearness };
  }

  /** One step, with what lies within the reach. False when the equations have no solution. */
  step(reachPx: number): boolean {
    const size = ofPose * (this.#views.length - 1) + 1;
    const equations: Equations = { size, matrix: new Float64Array(size * size), right: new Float64Array(size) };
    this.#addUsual(equations);
    const solvers = this.#points.map((point, index) =>
      addPoint(equations, point, (visit) => this.eachSight(index, reachPx, visit)),
    );
    for (let row = 0; row < size; row += 1) {
      const at = row * size + row;
      equations.matrix[at] = (equations.matrix[at] ?? 0) * (1 + damping);
    }
    if (!solveSymmetric(equations.matrix, equations.right)) return false;
    const { right } = equations;
    solvers.forEach((solve, index) => {
      const { x, y, nearness } = this.#points[index] ?? { x: 0, y: 0, nearness: 1 };
      const [dx, dy, dNearness] = solve(right);
      this.#points[index] = { x: x + dx, y: y + dy, nearness: Math.max(leastNearness, nearness + dNearness) };
    });
    for (let view = 1; view < this.#poses.length; view += 1) {
      const pose = this.#poses[view];
      if (pose) this.#poses[view] = posedBy(pose, right.subarray(ofPose * (view - 1), ofPose * view));
    }
    this.#turned = this.#poses.map(turned);
    this.#focalPx *= Math.exp(right[size - 1] ?? 0);
    return true;
  }

  #addUsual({ size, matrix, right }: Equations): void {
    for (let view = 1; view < this.#poses.length; view += 1) {
      const pose = this.#poses[view];
      if (pose)
        addUsualPose(pose, { at: ofPose * (view - 1), zoomed: this.#zoomed[view] ?? 0 }, { size, matrix, right });
    }
    const pull = (foundPx / usual.logFocal) ** 2;
    matrix[size * size - 1] = pull;
    right[size - 1] = -pull * Math.log(this.#focalPx / this.#startFocalPx);
  }
}

export type Equations = { readonly size: number; readonly matrix: Float64Array; readonly right: Float64Array };

/**
 * Adds what is usual of a pose to the equations whose unknowns begin at `at`. Cameras seldom zoom; how far one did is known
 * beforehand to a few hundredths.
 */
export function addUsualPose(
  { turn, shift, zoom }: Pose,
  { at, zoomed }: { readonly at: number; readonly zoomed: number },
  { size, matrix, right }: Equations,
): void {
  [...turn, ...shift, zoom - zoomed].forEach((value, index) => {
    const ofZoom = zoomed === 0 ? usual.zoom : usual.zoomed;
    const sd = index < 3 ? usual.turn : index < 6 ? usual.shift : ofZoom;
    const pull = (foundPx / sd) ** 2;
    const diagonal = (at + index) * size + at + index;
    matrix[diagonal] = (matrix[diagonal] ?? 0) + pull;
    right[at + index] = (right[at + index] ?? 0) - pull * value;
  });
}

/** A pose after a step of its seven unknowns. */
export function posedBy({ turn, shift, zoom }: Pose, step: Float64Array): Pose {
  const [a = 0, b = 0, c = 0, x = 0, y = 0, z = 0, dZoom = 0] = step;
  return { turn: turnedBy(turn, [a, b, c]), shift: [shift[0] + x, shift[1] + y, shift[2] + z], zoom: zoom + dZoom };
}

/** Adds the sights of a point, with the point itself taken out; gives what solves for the point afterwards. */
function addPoint(
  { size, matrix, right }: Equations,
  { nearness }: RoomPoint,
  eachSight: (visit: (sight: Sight, view: number) => void) => void,
): (solution: Float64Array) => readonly [number, number, number] {
  const own = new Float64Array(9);
  const pull = new Float64Array(3);
  const prior = (foundPx / usual.nearness) ** 2;
  own[0] = own[4] = 1e-6;
  own[8] = prior + 1e-6;
  pull[2] = prior * (1 - nearness);
  /** Unknowns that the point shares equations with: their place, and three numbers each. */
  const places: number[] = [];
  const shared: number[] = [];
  const ofFocal = [0, 0, 0];
  eachSight(({ weight, leftX, leftY, byPose, byPoint }, view) => {
    const byFocal = [byPose[6] ?? 0, byPose[13] ?? 0] as const;
    for (let a = 0; a < 3; a += 1) {
      const [ax, ay] = [weight * (byPoint[a] ?? 0), weight * (byPoint[3 + a] ?? 0)];
      for (let b = 0; b < 3; b += 1)
        own[3 * a + b] = (own[3 * a + b] ?? 0) + ax * (byPoint[b] ?? 0) + ay * (byPoint[3 + b] ?? 0);
      pull[a] = (pull[a] ?? 0) + ax * leftX + ay * leftY;
      ofFocal[a] = (ofFocal[a] ?? 0) + ax * byFocal[0] + ay * byFocal[1];
    }
    const last = size * size - 1;
    matrix[last] = (matrix[last] ?? 0) + weight * (byFocal[0] ** 2 + byFocal[1] ** 2);
    right[size - 1] = (right[size - 1] ?? 0) + weight * (byFocal[0] * leftX + byFocal[1] * leftY);
    if (view === 0) return;
    const first = ofPose * (view - 1);
    for (let a = 0; a < ofPose; a += 1) {
      const [ax, ay] = [weight * (byPose[a] ?? 0), weight * (byPose[ofPose + a] ?? 0)];
      for (let b = 0; b <= a; b += 1) {
        const at = (first + a) * size + first + b;
        matrix[at] = (matrix[at] ?? 0) + ax * (byPose[b] ?? 0) + ay * (byPose[ofPose + b] ?? 0);
      }
      const bottom = (size - 1) * size + first + a;
      matrix[bottom] = (matrix[bottom] ?? 0) + ax * byFocal[0] + ay * byFocal[1];
      right[first + a] = (right[first + a] ?? 0) + ax * leftX + ay * leftY;
      places.push(first + a);
      for (let b = 0; b < 3; b += 1) shared.push(ax * (byPoint[b] ?? 0) + ay * (byPoint[3 + b] ?? 0));
    }
  });
  places.push(size - 1);
  shared.push(...ofFocal);
  const inverse = inverseOfThree(own);
  const times = Float64Array.from(shared, (_, index) => {
    const row = index - (index % 3);
    const column = index % 3;
    return (
      (shared[row] ?? 0) * (inverse[column] ?? 0) +
      (shared[row + 1] ?? 0) * (inverse[3 + column] ?? 0) +
      (shared[row + 2] ?? 0) * (inverse[6 + column] ?? 0)
    );
  });
  const of = Float64Array.from(shared);
  places.forEach((place, index) => {
    const a = times[3 * index] ?? 0;
    const b = times[3 * index + 1] ?? 0;
    const c = times[3 * index + 2] ?? 0;
    right[place] = (right[place] ?? 0) - a * (pull[0] ?? 0) - b * (pull[1] ?? 0) - c * (pull[2] ?? 0);
    for (let other = 0; other <= index; other += 1) {
      const at = place * size + (places[other] ?? 0);
      matrix[at] =
        (matrix[at] ?? 0) - a * (of[3 * other] ?? 0) - b * (of[3 * other + 1] ?? 0) - c * (of[3 * other + 2] ?? 0);
    }
  });
  return (solution) => {
    const left = [0, 1, 2].map((a) =>
      places.reduce((sum, place, index) => sum - (shared[3 * index + a] ?? 0) * (solution[place] ?? 0), pull[a] ?? 0),
    );
    const [x = 0, y = 0, z = 0] = [0, 1, 2].map((a) =>
      left.reduce((sum, value, k) => sum + (inverse[3 * a + k] ?? 0) * value, 0),
    );
    return [x, y, z];
  };
}

function inverseOfThree(m: Float64Array): Float64Array {
  const at = (index: number) => m[index] ?? 0;
  const minor = (a: number, b: number, c: number, d: number) => at(a) * at(d) - at(b) * at(c);
  const cofactors = [
    minor(4, 5, 7, 8),
    -minor(1, 2, 7, 8),
    minor(1, 2, 4, 5),
    -minor(3, 5, 6, 8),
    minor(0, 2, 6, 8),
    -minor(0, 2, 3, 5),
    minor(3, 4, 6, 7),
    -minor(0, 1, 6, 7),
    minor(0, 1, 3, 4),
  ];
  const determinant = at(0) * (cofactors[0] ?? 0) + at(1) * (cofactors[3] ?? 0) + at(2) * (cofactors[6] ?? 0);
  return Float64Array.from(cofactors, (value) => value / determinant);
}
