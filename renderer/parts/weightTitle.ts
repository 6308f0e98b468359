import type { Weight } from '../../engine/rubric/rubric.ts';

/** A weight's word with a capital, to begin a label; the word always stands with the strokes. */
export const weightTitle = (weight: Weight): string => `${weight.charAt(0).toUpperCase()}${weight.slice(1)}`;
