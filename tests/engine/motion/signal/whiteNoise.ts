/** White noise with a standard deviation of 1, the same for the same seed: a congruential generator (Numerical Recipes), Box-Muller. */
export function whiteNoise(count: number, seed: number): number[] {
  let state = seed >>> 0;
  const share = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return Array.from({ length: count }, () => Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share()));
}

/** Height in metres of a lift of 0.6 m up and down in 3 s, again and again, by smooth moves (minimum jerk: Flash & Hogan 1985). */
export function liftedM(timeS: number): number {
  const smooth = (share: number) => share ** 3 * (10 + share * (6 * share - 15));
  const inRepS = timeS % 3;
  if (inRepS < 1.4) return -0.6 * smooth(inRepS / 1.4);
  if (inRepS < 1.8) return -0.6;
  if (inRepS < 2.6) return 0.6 * (smooth((inRepS - 1.8) / 0.8) - 1);
  return 0;
}
