import type { CameraPath, Sighting } from '../../recording/recording.ts';
import type { FollowedPart, FollowReason, Follows } from '../measurement.ts';
import type { GestureCheck } from './gesture.ts';

/** What is followed through a clip, frame by frame, in lifting time. */
export type Tracked = {
  readonly follows: Exclude<Follows, 'nothing'>;
  readonly because: FollowReason;
  readonly sightings: readonly (Sighting | null)[];
  /** At the depth of what is followed. */
  readonly camera: CameraPath | null;
  /** Standard deviation of what that leaves of the camera's own movement, in pixels; 0 for a camera that stands. */
  readonly wanderPx: number;
  /** What is followed goes as far as the load does; false of an elbow in place of the hand. */
  readonly givesRange: boolean;
  /** How far each place may be off (one standard deviation), as a share of the range; 0 where it is told by its noise alone. */
  readonly doubtShare: number;
  /** Null where nothing tells a gesture of the hands from the lift, as where the load itself is followed. */
  readonly isGesture: GestureCheck | null;
};

/** Whether a part of the body is followed, and not the load itself. */
export const isOfBody = (follows: Follows): follows is FollowedPart =>
  follows !== 'disc' && follows !== 'point' && follows !== 'nothing';
