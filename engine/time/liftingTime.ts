/**
 * Media time as lifting time: what the lifter lived through. `realTimeFactor` = capture rate / playback rate, 8
 * for 240 frames per second stored as 30. Microseconds, rounded half up.
 */
export function mediaToLiftingUs(mediaUs: number, realTimeFactor: number): number {
  return Math.round(mediaUs / realTimeFactor);
}
