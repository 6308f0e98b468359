/** From flags to grades: the arithmetic, its tree, and what would raise it. */
export type * from './grade.ts';
export { gradeEntry } from './gradeEntry.ts';
export { gradeSession } from './gradeSession.ts';
export { type RepTotal, repTotals } from './repTotals.ts';
