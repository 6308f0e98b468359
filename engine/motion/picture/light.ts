/** Brightness on screen grows about as light to the power of 1/2.2 (ITU-R BT.1886, IEC 61966-2-1). */
const gamma = 2.2;
const most = 255;
const steps = 4;
const lights = Float64Array.from({ length: most * steps + 2 }, (_, at) => most * (at / (most * steps)) ** gamma);

/**
 * The light (0-255) that a brightness (0-255) stands for. Lens and sensor blur light, not brightness: an edge lies where
 * light changes most, brightness changes most on its darker side.
 */
export function lightOf(brightness: number): number {
  const at = Math.min(Math.max(brightness, 0), most) * steps;
  const below = at | 0;
  const lower = lights[below] ?? 0;
  return lower + ((lights[below + 1] ?? 0) - lower) * (at - below);
}
