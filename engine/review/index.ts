/** The open review format: its types, reading and writing it, and questions asked of it. */
export * from './drawings/index.ts';
export { compareMoments, momentUs, momentUsInClip } from './moments.ts';
export { type ParsedReview, parseReview, readReview } from './parseReview.ts';
export { clipOf, entryOfClip, flagsOfClip, plainReps, repIndices, setsDone, ticksOfClip } from './parts.ts';
export * from './review.ts';
export { reviewUnder } from './reviewUnder.ts';
export { rubricVersionOf } from './rubricVersionOf.ts';
export { writeReview } from './writeReview.ts';
