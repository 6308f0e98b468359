import type { Exercise } from '../../exercises/index.ts';

/** Where an end of the range is in the picture, or else by its muscles: "at the bottom". */
export function endName({ lowerEnd }: Exercise, end: 'long' | 'short' | 'lower'): string {
  if (end === 'lower') return 'at the bottom';
  if (lowerEnd === 'neither') return `at the ${end} end`;
  return end === lowerEnd ? 'at the bottom' : 'at the top';
}
