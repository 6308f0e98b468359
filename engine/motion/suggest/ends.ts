import type { Exercise } from '../../exercises/exercise.ts';

/** Where an end of the range is in the picture, or else by its muscles. */
export function whereEndIs({ lowerEnd }: Exercise, end: 'long' | 'short'): 'bottom' | 'top' | 'longEnd' | 'shortEnd' {
  if (lowerEnd === 'neither') return `${end}End`;
  return end === lowerEnd ? 'bottom' : 'top';
}

/** What the eccentric does: it lowers the load unless the target muscles are longest at another end. */
export const eccentricVerb = ({ lowerEnd }: Exercise): 'lowers' | 'returns' =>
  lowerEnd === 'long' ? 'lowers' : 'returns';
