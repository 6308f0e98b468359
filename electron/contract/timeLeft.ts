/** Too little has been done before this to tell how long the rest takes. */
const leastShare = 0.02;
const leastSeconds = 2;

/**
 * Seconds that work still takes, if it goes on as fast as so far; null while that can't be told.
 *
 * @param tookS seconds since it began
 * @param share how much of it is done, 0-1; null while unknown
 */
export function secondsLeft(tookS: number, share: number | null): number | null {
  if (share === null || share < leastShare || tookS < leastSeconds) return null;
  return (tookS * Math.max(0, 1 - share)) / share;
}
