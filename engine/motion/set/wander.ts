/** Nine in ten errors of a normal distribution lie within so many deviations. */
export const nineInTen = 1.645;

/** How often in a second a camera in somebody's hands sways, at most. */
const wanderHz = 0.8;

/** How fast the rest of a camera's movement may carry a thing along, nine times in ten, from its deviation. */
export const wanderSpeed = (wander: number): number => nineInTen * 2 * Math.PI * wanderHz * wander;
