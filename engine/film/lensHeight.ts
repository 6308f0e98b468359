import type { Exercise } from '../exercises/exercise.ts';

/** At what height the lens sees the thing that is judged without looking down on it or up to it. */
export type LensHeight = 'hip' | 'bench' | 'chest';

const lying = new Set(['horizontal press', 'chest fly']);
const low = new Set(['squat', 'hinge', 'lunge', 'hip extension', 'sled press', 'calf raise', 'knee flexion', 'hold']);

/** The height for an exercise, by what its pattern has to show. */
export function lensHeight({ pattern, id }: Exercise): LensHeight {
  if (lying.has(pattern) && !id.includes('push-up') && id !== 'dip' && !id.startsWith('cable')) return 'bench';
  return low.has(pattern) || id.includes('push-up') ? 'hip' : 'chest';
}
