/** Acceleration of free fall in m/s². */
const gravity = 9.81;

/**
 * Mean upward speed, in m/s, over the propulsive part of a concentric: the samples before the load first slows down
 * faster than free fall (Sánchez-Medina & González-Badillo 2011). Speeds evenly spaced by `stepS`, of the concentric
 * alone; null for fewer than three.
 */
export function meanPropulsiveMps(speedsMps: readonly number[], setting: { readonly stepS: number }): number | null {
  if (speedsMps.length < 3) return null;
  const accelerations = speedsMps.map((_, i) => {
    const [from, to] = [Math.max(0, i - 1), Math.min(speedsMps.length - 1, i + 1)];
    return ((speedsMps[to] ?? 0) - (speedsMps[from] ?? 0)) / ((to - from) * setting.stepS);
  });
  const braked = accelerations.findIndex((acceleration) => acceleration < -gravity);
  const propulsive = braked === -1 ? speedsMps : speedsMps.slice(0, Math.max(1, braked));
  return propulsive.reduce((sum, speed) => sum + speed, 0) / propulsive.length;
}
