import type { Weight } from '../../engine/rubric/rubric.ts';

/** The word that always stands with a weight's strokes. */
export const weightWord = (weight: Weight): string => weight;

/** The same with a capital, to begin a label. */
export const weightTitle = (weight: Weight): string => `${weight.charAt(0).toUpperCase()}${weight.slice(1)}`;
