import type { View } from '../../engine/exercises/exercise.ts';

/** A camera view's name to begin a label with. */
export const viewTitle = (view: View): string => `${view.charAt(0).toUpperCase()}${view.slice(1)}`;
