/** Speeds to choose from, slowest first. */
export const speeds = [0.1, 0.25, 0.5, 0.75, 1, 1.5, 2] as const;

/** The next slower or faster speed; the ends stay where they are. */
export function stepSpeed(speed: number, direction: 'slower' | 'faster'): number {
  const next = direction === 'faster' ? speeds.find((s) => s > speed) : speeds.findLast((s) => s < speed);
  return next ?? speed;
}
