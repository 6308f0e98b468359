/** Covers: what is made unrecognisable in a clip, where it is at each frame, and how one follows the lifter's head. */
export { boxAt } from './boxAt.ts';
export * from './cover.ts';
export { headCover } from './headCover.ts';
export { meetsPicture, withoutPlace, withPlace } from './places.ts';
