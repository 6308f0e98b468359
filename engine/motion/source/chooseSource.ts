import type { Exercise } from '../../exercises/exercise.ts';
import type { Recording, Sighting } from '../../recording/recording.ts';
import { cameraOf } from '../camera/cameraPath.ts';
import { type HeightOf, jointHeights } from '../joints/jointHeights.ts';
import type { Tracked } from './tracked.ts';

const followedPart = { wrist: 'hands', shoulder: 'shoulders', hip: 'hips', head: 'head' } as const;

/**
 * What is followed: first of all a point that the coach clicked, since it was clicked because nothing else is the load; then
 * a disc; else the body. In an exercise without a disc, one counts only when it makes the lifter beside it a believable
 * height: the head of a dumbbell is round too.
 */
export function followedIn({
  recording,
  exercise,
  mediaTimesS,
  shown,
  isFullSize,
}: {
  readonly recording: Recording;
  readonly exercise: Exercise;
  readonly mediaTimesS: readonly number[];
  readonly shown: { readonly width: number; readonly height: number };
  /** Whether the disc makes the lifter a believable height. */
  readonly isFullSize: () => boolean;
}): Tracked | null {
  const { disc, point } = recording;
  const camera = cameraOf(recording);
  if (point) return { follows: 'point', because: 'clicked', sightings: point.frames, camera };
  const byDisc = disc ? ({ follows: 'disc', because: 'discUnchecked', sightings: disc.frames, camera } as const) : null;
  const hasDisc = exercise.trackedPoint === 'disc' || exercise.trackedPoint === 'bar-end';
  if (byDisc && hasDisc) return byDisc;
  const sightings = followedJoints(recording, exercise, { mediaTimesS, shown });
  if (!sightings || (byDisc && isFullSize())) return byDisc;
  const because = disc ? 'discOfUnlikelySize' : hasDisc ? 'noDisc' : 'noDiscExpected';
  return { follows: followedPart[partFollowed(exercise)], because, sightings, camera };
}

/** The part of the body that rises and falls with a rep where no disc is followed. */
function partFollowed({ trackedPoint, pattern }: Exercise): HeightOf {
  if (trackedPoint === 'hip') return 'hip';
  if (trackedPoint === 'head') return 'head';
  return ['squat', 'lunge', 'hinge'].includes(pattern) ? 'shoulder' : 'wrist';
}

/** A part of the body as if it were the point followed, frame by frame: its height alone, always in mid-picture. */
function followedJoints(
  recording: Recording,
  exercise: Exercise,
  {
    mediaTimesS,
    shown,
  }: { readonly mediaTimesS: readonly number[]; readonly shown: { readonly width: number; readonly height: number } },
): readonly (Sighting | null)[] | null {
  if (!recording.joints) return null;
  const heights = jointHeights(recording.joints, {
    of: partFollowed(exercise),
    timesS: mediaTimesS,
    pictureHeightPx: shown.height,
  });
  if (heights.every((height) => height === null)) return null;
  return heights.map((height) =>
    height === null ? null : { xPx: shown.width / 2, yPx: shown.height - height, confidence: 0.7 },
  );
}
