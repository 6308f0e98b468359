import type { CameraPath, Sighting } from '../../recording/recording.ts';
import type { FollowedPart, FollowReason, Follows } from '../measurement.ts';

/** What is followed through a clip, frame by frame, in lifting time. */
export type Tracked = {
  readonly follows: Exclude<Follows, 'nothing'>;
  readonly because: FollowReason;
  readonly sightings: readonly (Sighting | null)[];
  readonly camera: CameraPath | null;
};

/** Whether a part of the body is followed, and not the load itself. */
export const isOfBody = (follows: Follows): follows is FollowedPart =>
  follows !== 'disc' && follows !== 'point' && follows !== 'nothing';
