import type { Exercise } from './exercise.ts';

/** Things that hold or support the lifter and weigh nothing on them. */
const supports: ReadonlySet<string> = new Set(['bench', 'box', 'wheel']);

/** An exercise whose load is the lifter's own weight; a load beside it is added. */
export const isBodyWeight = ({ implement }: Pick<Exercise, 'implement'>): boolean =>
  implement.startsWith('body weight') || supports.has(implement);

/** An exercise in which a machine takes some of the lifter's weight: its load is help. */
export const isAssisted = ({ implement }: Pick<Exercise, 'implement'>): boolean => implement.startsWith('assisted');
