import { solveSymmetric } from './cholesky.ts';
import { type Pose, type RoomPoint, rotated, rotationBy, seenAtFirst, turnedBy } from './pose.ts';

/**
 * Places of the same patches in one picture: x and y of each patch, one after the other, in pixels from the picture's middle;
 * NaN where it was not found.
 */
export type View = Float64Array;

/** What is usual before anything is seen, as standard deviations: weak, so that they only tell what the views can't. */
const usual = { turn: 1, shift: 0.05, zoom: 0.002, nearness: 0.5, logFocal: 0.15 } as const;
/** How exactly a patch is found again: what the above are weighed against, in pixels. */
const foundPx = 0.1;
const damping = 1e-3;
/** Lower things are usually nearer: by so much a focal length below the middle. */
const nearerBelow = 0.5;
const leastNearness = 0.02;

const ofPose = 7;

/** One patch in one view: what is left there, and how it changes with pose, point and the logarithm of the focal length. */
type Sight = {
  readonly weight: number;
  readonly leftX: number;
  readonly leftY: number;
  /** Two rows of seven: turn, shift, zoom. */
  readonly byPose: Float64Array;
  /** Two rows of three: x, y, nearness. */
  readonly byPoint: Float64Array;
  readonly byFocal: readonly [x: number, y: number];
};

/** How much a residual counts: little beyond the reach (Geman & McClure 1987). */
export const weightOf = (leftPx: number, reachPx: number): number => (1 + (leftPx / reachPx) ** 2) ** -2;

/** What a pose, a point and a focal length leave of a place where a patch was found. */
export function sightOf(
  pose: Pose,
  point: RoomPoint,
  {
    focalPx,
    xPx,
    yPx,
    reachPx,
  }: { readonly focalPx: number; readonly xPx: number; readonly yPx: number; readonly reachPx: number },
): Sight {
  const rotation = rotationBy(pose.turn);
  const [ax, ay, az] = rotated(rotation, [point.x, point.y, 1]);
  const depth = az + point.nearness * pose.shift[2];
  const size = (focalPx * Math.exp(pose.zoom)) / depth;
  const x = size * (ax + point.nearness * pose.shift[0]);
  const y = size * (ay + point.nearness * pose.shift[1]);
  const [inX, inY] = [x / depth, y / depth];
  const along = (dx: number, dy: number, dz: number): readonly [number, number] => [
    size * dx - inX * dz,
    size * dy - inY * dz,
  ];
  const columns = [
    along(0, -az, ay),
    along(az, 0, -ax),
    along(-ay, ax, 0),
    along(point.nearness, 0, 0),
    along(0, point.nearness, 0),
    along(0, 0, point.nearness),
    [x, y],
  ] as const;
  const byPose = new Float64Array(2 * ofPose);
  columns.forEach(([across, down], column) => {
    byPose[column] = across;
    byPose[ofPose + column] = down;
  });
  const [first, second, third] = rotation;
  const ofPoint = [
    along(first[0], second[0], third[0]),
    along(first[1], second[1], third[1]),
    along(...pose.shift),
  ] as const;
  const byPoint = Float64Array.of(...ofPoint.map(([across]) => across), ...ofPoint.map(([, down]) => down));
  const [leftX, leftY] = [xPx - x, yPx - y];
  return { weight: weightOf(Math.hypot(leftX, leftY), reachPx), leftX, leftY, byPose, byPoint, byFocal: [x, y] };
}

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

  constructor(
    views: readonly View[],
    { poses, focalPx }: { readonly poses: readonly Pose[]; readonly focalPx: number },
  ) {
    this.#views = views.map((view) => Float64Array.from(view));
    this.#startFocalPx = focalPx;
    this.#focalPx = focalPx;
    this.#poses = [...poses];
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

  /** What is left at each place of a point that is seen. */
  sightsOf(point: number, reachPx: number): (Sight & { readonly view: number })[] {
    const at = this.#points[point];
    return this.#views.flatMap((places, view) => {
      const [xPx = Number.NaN, yPx = Number.NaN] = [places[2 * point], places[2 * point + 1]];
      const pose = this.#poses[view];
      if (!pose || !at || Number.isNaN(xPx)) return [];
      return { view, ...sightOf(pose, at, { focalPx: this.#focalPx, xPx, yPx, reachPx }) };
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
    const solvers = this.#points.map((point, index) => addPoint(equations, point, this.sightsOf(index, reachPx)));
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
    this.#focalPx *= Math.exp(right[size - 1] ?? 0);
    return true;
  }

  #addUsual({ size, matrix, right }: Equations): void {
    for (let view = 1; view < this.#poses.length; view += 1) {
      const pose = this.#poses[view];
      if (pose) addUsualPose(pose, ofPose * (view - 1), { size, matrix, right });
    }
    const pull = (foundPx / usual.logFocal) ** 2;
    matrix[size * size - 1] = pull;
    right[size - 1] = -pull * Math.log(this.#focalPx / this.#startFocalPx);
  }
}

export type Equations = { readonly size: number; readonly matrix: Float64Array; readonly right: Float64Array };

/** Adds what is usual of a pose to the equations whose unknowns begin at `at`. */
export function addUsualPose({ turn, shift, zoom }: Pose, at: number, { size, matrix, right }: Equations): void {
  [...turn, ...shift, zoom].forEach((value, index) => {
    const sd = index < 3 ? usual.turn : index < 6 ? usual.shift : usual.zoom;
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
  sights: readonly (Sight & { readonly view: number })[],
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
  for (const { view, weight, leftX, leftY, byPose, byPoint, byFocal } of sights) {
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
    if (view === 0) continue;
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
  }
  places.push(size - 1);
  shared.push(...ofFocal);
  const inverse = inverseOfThree(own);
  const times = Float64Array.from(shared, (_, index) => {
    const row = index - (index % 3);
    const column = index % 3;
    return [0, 1, 2].reduce((sum, k) => sum + (shared[row + k] ?? 0) * (inverse[3 * k + column] ?? 0), 0);
  });
  places.forEach((place, index) => {
    const [a = 0, b = 0, c = 0] = times.subarray(3 * index, 3 * index + 3);
    right[place] = (right[place] ?? 0) - a * (pull[0] ?? 0) - b * (pull[1] ?? 0) - c * (pull[2] ?? 0);
    for (let other = 0; other <= index; other += 1) {
      const at = place * size + (places[other] ?? 0);
      matrix[at] =
        (matrix[at] ?? 0) -
        a * (shared[3 * other] ?? 0) -
        b * (shared[3 * other + 1] ?? 0) -
        c * (shared[3 * other + 2] ?? 0);
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
