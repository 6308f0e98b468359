type Joint = { readonly x: number; readonly y: number };

/** The lifter's near side in one frame, in pixels of the upright picture; null = not seen. 0° = straight, upright. */
export type NearSide = {
  readonly shoulder: Joint | null;
  readonly hip: Joint | null;
  readonly knee: Joint | null;
  readonly ankle: Joint | null;
  readonly kneeDeg: number | null;
  readonly trunkLeanDeg: number | null;
};

/** The joints in the order in which a line runs through them. */
export const nearSideJoints = ['shoulder', 'hip', 'knee', 'ankle'] as const;

/** Each angle with the joint that it is written beside. */
export const nearSideAngles = [
  { angle: 'kneeDeg', beside: 'knee' },
  { angle: 'trunkLeanDeg', beside: 'hip' },
] as const;

/** An angle to ten degrees, "90°": no finer than what joints read from a picture can tell. */
export const angleInTens = (degrees: number): string => `${Math.round(degrees / 10) * 10}°`;
