/** A clicked point, followed by its looks. */
export { PointFollower } from './pointFollower.ts';
