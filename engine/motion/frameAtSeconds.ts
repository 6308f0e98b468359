/** The last frame of an ascending list of times that is not after a time, in seconds; 0 before all of them. */
export function frameAtSeconds(timesS: readonly number[], seconds: number): number {
  let low = 0;
  let high = timesS.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((timesS[middle] ?? 0) <= seconds + 1e-6) low = middle;
    else high = middle - 1;
  }
  return low;
}
