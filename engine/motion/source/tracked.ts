import type { CameraPath, Sighting } from '../../recording/recording.ts';
import type { FollowedPart, FollowReason, Follows } from '../measurement.ts';

/** What is followed through a clip, frame by frame, in lifting time. */
export type Tracked = {
  readonly follows: Exclude<Follows, 'nothing'>;
  readonly because: FollowReason;
  readonly sightings: readonly (Sighting | null)[];
  readonly camera: CameraPath | null;
  /** What is followed goes as far as the load does; false of an elbow in place of the hand. */
  readonly givesRange: boolean;
  /** How far each place may be off (one standard deviation), as a share of the range; 0 where it is told by its noise alone. */
  readonly doubtShare: number;
};

/** Whether a part of the body is followed, and not the load itself. */
export const isOfBody = (follows: Follows): follows is FollowedPart =>
  follows !== 'disc' && follows !== 'point' && follows !== 'nothing';
