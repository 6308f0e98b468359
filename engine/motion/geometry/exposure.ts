/** Seconds by which a duration between two events can be wrong at most when each is known to one frame. */
export const frameTimeWorstS = (framesPerSecond: number): number => 1 / framesPerSecond;

/** Standard deviation of that duration in seconds: two even distributions, each one frame wide, 1 / (f √6). */
export const frameTimeSdS = (framesPerSecond: number): number => 1 / (framesPerSecond * Math.sqrt(6));

/** Frames per second needed to time a phase to ± `withinS` when each end may be picked wrong by `framesOff` frames. */
export const rateToTimeWithin = (wish: { readonly withinS: number; readonly framesOff: number }): number =>
  (2 * wish.framesOff + 1) / wish.withinS;

/** Length of the smear of a moving thing in one picture, in metres. */
export const blurM = (of: { readonly speedMps: number; readonly exposureS: number }): number =>
  of.speedMps * of.exposureS;
