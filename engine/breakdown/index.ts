/** The breakdown: on one page, how each grade of a session comes about. */
export { writeBreakdown } from './writeBreakdown.ts';
