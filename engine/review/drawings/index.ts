/** Drawings over the picture: their shapes, geometry, moving them, and when they show. */
export * from './drawing.ts';
export { angleDeg, distancePx, distanceToDrawnPx, distanceToStretchPx } from './geometry.ts';
export { moveDrawn, placePoint } from './move.ts';
export { showsAt, usualLastFrame } from './shownFrames.ts';
