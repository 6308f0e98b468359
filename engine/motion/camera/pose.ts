/**
 * Where a camera is against the first frame: q = R(turn) · (x, y, 1) + nearness · shift takes a point of the room into it,
 * and the picture shows exp(zoom) · focal length · (qx, qy) / qz from its middle.
 */
export type Pose = {
  /** Rotation vector in radians: about the axis to the right, the one down and the one into the picture. */
  readonly turn: Vector;
  /** How far the room moved in the camera's axes, in distances of something of nearness 1. */
  readonly shift: Vector;
  /** Natural logarithm of how much longer the focal length became. */
  readonly zoom: number;
};

export type Vector = readonly [x: number, y: number, z: number];

/** A point of the room: its direction in the first frame as x / z and y / z, and nearness = 1 / distance in depth. */
export type RoomPoint = { readonly x: number; readonly y: number; readonly nearness: number };

/** Row by row. */
export type Rotation = readonly [Vector, Vector, Vector];

export const atRest: Pose = { turn: [0, 0, 0], shift: [0, 0, 0], zoom: 0 };

/** The rotation by a rotation vector (Rodrigues's formula). */
export function rotationBy([x, y, z]: Vector): Rotation {
  const angle = Math.hypot(x, y, z);
  const sine = angle < 1e-9 ? 1 : Math.sin(angle) / angle;
  const rest = angle < 1e-9 ? 0.5 : (1 - Math.cos(angle)) / (angle * angle);
  const along = 1 - rest * angle * angle;
  return [
    [along + rest * x * x, rest * x * y - sine * z, rest * x * z + sine * y],
    [rest * x * y + sine * z, along + rest * y * y, rest * y * z - sine * x],
    [rest * x * z - sine * y, rest * y * z + sine * x, along + rest * z * z],
  ];
}

/** The rotation vector of one turn after another, for a small second turn. */
export function turnedBy(turn: Vector, small: Vector): Vector {
  const after = product(rotationBy(small), rotationBy(turn));
  const [[xx, xy, xz], [yx, yy, yz], [zx, zy, zz]] = after;
  const sine: Vector = [(zy - yz) / 2, (xz - zx) / 2, (yx - xy) / 2];
  const size = Math.hypot(...sine);
  if (size < 1e-9) return sine;
  const angle = Math.atan2(size, (xx + yy + zz - 1) / 2);
  return [(sine[0] * angle) / size, (sine[1] * angle) / size, (sine[2] * angle) / size];
}

function product(one: Rotation, other: Rotation): Rotation {
  const row = ([x, y, z]: Vector): Vector => [
    x * other[0][0] + y * other[1][0] + z * other[2][0],
    x * other[0][1] + y * other[1][1] + z * other[2][1],
    x * other[0][2] + y * other[1][2] + z * other[2][2],
  ];
  return [row(one[0]), row(one[1]), row(one[2])];
}

export const rotated = ([first, second, third]: Rotation, [x, y, z]: Vector): Vector => [
  first[0] * x + first[1] * y + first[2] * z,
  second[0] * x + second[1] * y + second[2] * z,
  third[0] * x + third[1] * y + third[2] * z,
];

/**
 * Where the first frame showed what a camera in a pose sees at a place, if that is as near as told in the first frame; both
 * in focal lengths from the picture's middle.
 */
export function seenAtFirst(
  { turn, shift, zoom }: Pose,
  { x, y }: { readonly x: number; readonly y: number },
  nearness: number,
): { readonly x: number; readonly y: number } {
  const size = Math.exp(-zoom);
  const back = rotationBy([-turn[0], -turn[1], -turn[2]]);
  const ray = rotated(back, [x * size, y * size, 1]);
  const off = rotated(back, shift);
  // The ray ends where its depth in the first frame is 1 / nearness.
  const length = (1 + nearness * off[2]) / ray[2];
  return { x: length * ray[0] - nearness * off[0], y: length * ray[1] - nearness * off[1] };
}
