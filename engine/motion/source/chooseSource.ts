import type { Exercise } from '../../exercises/exercise.ts';
import type { Recording } from '../../recording/recording.ts';
import { cameraOf } from '../camera/cameraPath.ts';
import { type BodyCandidate, bodyCandidates } from './bodyCandidate.ts';
import { partsOf } from './parts.ts';
import type { Tracked } from './tracked.ts';

/** A part of the body that is seen in fewer of the looks gives way to the next. */
const leastCoverage = 0.6;

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
  const body =
    recording.joints &&
    bestOf(
      partsOf(exercise),
      bodyCandidates({ bodies: recording.joints, timesS: mediaTimesS, camera, pictureHeightPx: shown.height }),
    );
  if (!body || (byDisc && isFullSize())) return byDisc;
  const because = disc ? 'discOfUnlikelySize' : hasDisc ? 'noDisc' : 'noDiscExpected';
  return { follows: body.part, because, sightings: body.sightings, camera };
}

function bestOf(parts: readonly BodyCandidate['part'][], make: (part: BodyCandidate['part']) => BodyCandidate | null) {
  const made = parts.flatMap((part) => make(part) ?? []);
  return made.find(({ coverage }) => coverage >= leastCoverage) ?? made[0] ?? null;
}
