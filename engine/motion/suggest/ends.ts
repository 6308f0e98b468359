import type { Exercise } from '../../exercises/exercise.ts';

/** Where an end of the range is in the picture, or else by its muscles: "at the bottom". */
export function endName({ lowerEnd }: Exercise, end: 'long' | 'short'): string {
  if (lowerEnd === 'neither') return `at the ${end} end`;
  return end === lowerEnd ? 'at the bottom' : 'at the top';
}

/** What the eccentric does: it lowers the load unless the target muscles are longest at another end. */
export const eccentricVerb = ({ lowerEnd }: Exercise): string => (lowerEnd === 'long' ? 'lowers' : 'returns');
