import type { ClipCover } from '../../../../engine/covers/cover.ts';
import type { Edition } from '../../../../engine/edition/edition.ts';
import type { View } from '../../../../engine/exercises/exercise.ts';
import { cameraOf } from '../../../../engine/motion/camera/cameraPath.ts';
import type { CameraPath, JointRecording, Recording } from '../../../../engine/recording/recording.ts';
import type { SetUp } from '../../../../engine/recording/setUp.ts';
import type { ClipFacts } from '../../../../engine/review/review.ts';
import type { JobStep } from '../../../../engine/wording/sayJob.ts';
import type { Narration } from '../render/clips/narratedFilm.ts';
import { nearSideReader } from '../render/overlay/nearSideReader.ts';
import type { ClipToShow } from '../render/picture.ts';

/** How far a part of the work is: `share` 0-1. */
export type HandoverWork = {
  readonly signal: AbortSignal;
  readonly report: (share: number, step: JobStep) => void;
};

/** A clip whose footage is at hand; nothing is covered yet. */
export type OpenedClip = {
  readonly clip: ClipToShow;
  readonly facts: ClipFacts;
  /** Raw joints, for what follows the head; null where they were not measured. */
  readonly joints: JointRecording | null;
  /** What was covered on it for good: nothing of it leaves without. */
  readonly covered: readonly ClipCover[];
  /** What the coach said over it; null where nothing was. */
  readonly narration: Narration | null;
};

/** A session to hand over, from a library or from a review file. */
export type HandoverSource = {
  /** With what was measured already, also of clips whose footage is gone. */
  readonly edition: Edition;
  /** Throws a problem that says why there is nothing to show of a clip. */
  readonly openClip: (clipId: string, work: HandoverWork) => Promise<OpenedClip>;
};

/** What is known of a clip, in pieces. */
export type KnownClip = Pick<
  ClipToShow,
  'file' | 'table' | 'shown' | 'framing' | 'range' | 'hasSound' | 'drawings' | 'measurement'
> & {
  readonly facts: ClipFacts;
  readonly setUp: SetUp;
  /** As the coach chose it. */
  readonly view: View | null;
  readonly recording: Recording | null;
  readonly narration: Narration | null;
  readonly covered: readonly ClipCover[];
};

/** A clip with all that was seen in it, ready to be drawn over; nothing is covered yet. */
export function openedClip({ facts, setUp, view, recording, covered, narration, ...known }: KnownClip): OpenedClip {
  const { table, shown, measurement } = known;
  const rollDeg = measurement?.calibration?.rollDeg ?? 0;
  return {
    clip: {
      ...known,
      camera: recording && removedCamera(recording),
      body: recording && nearSideReader(recording, { table, shown, setUp, view, rollDeg }),
      covers: [],
    },
    facts,
    joints: recording?.joints ?? null,
    covered,
    narration,
  };
}

/** How the camera moved, where that was taken out of the measures. */
function removedCamera(recording: Recording): CameraPath | null {
  const camera = cameraOf(recording);
  return camera?.moves && camera.removable ? camera : null;
}
