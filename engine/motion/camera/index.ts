/** The camera's own movement, from the background. */
export { CameraFollower } from './cameraFollower.ts';
export { plumbAt } from './plumbAt.ts';
export { inverseOf, type Similarity } from './similarity.ts';
export { type CameraMoves, ontoFirst, steadied, unsteadied } from './steadied.ts';
