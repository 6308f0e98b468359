/** The disc in the picture: found, learnt from a click, followed from frame to frame. */
export { DiscFollower } from './discFollower.ts';
export { DiscTracker, type TrackedDisc } from './discTracker.ts';
export { learnClicked } from './learnClicked.ts';
export { type LearntDisc, learnDisc } from './learnDisc.ts';
export { type DiscShape, roundDisc } from './shape.ts';
