/** The camera's own movement, from the background. */
export { CameraFollower, steadied } from './cameraFollower.ts';
export { plumbAt } from './plumbAt.ts';
