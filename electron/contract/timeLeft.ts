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

/** Time left as people say it, coarser the longer it is: "a few seconds left", "about 40 s left", "about 3 min left". */
export function leftInWords(seconds: number): string {
  if (seconds < 5) return 'a few seconds left';
  if (seconds < 55) return `about ${Math.ceil(seconds / 10) * 10} s left`;
  const minutes = Math.max(1, Math.round(seconds / 60));
  if (minutes < 60) return `about ${minutes} min left`;
  const hours = Math.floor(minutes / 60);
  return minutes % 60 === 0 ? `about ${hours} h left` : `about ${hours} h ${minutes % 60} min left`;
}
