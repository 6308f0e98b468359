import type { ClipCover } from '../../../../engine/covers/cover.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import type { Recording } from '../../../../engine/recording/recording.ts';
import type { SetUp } from '../../../../engine/recording/setUp.ts';
import type { ClipFacts } from '../../../../engine/review/review.ts';
import { nearSideReader } from '../render/overlay/nearSideReader.ts';
import type { ClipToShow } from '../render/picture.ts';
import type { OpenedClip } from './handoverSource.ts';

/** What is known of a clip, in pieces. */
export type KnownClip = Pick<ClipToShow, 'file' | 'table' | 'shown' | 'hasSound' | 'drawings' | 'measurement'> & {
  readonly facts: ClipFacts;
  readonly setUp: SetUp;
  readonly recording: Recording | null;
  readonly covered: readonly ClipCover[];
};

/** A clip with all that was seen in it, ready to be drawn over; nothing is covered yet. */
export function openedClip({ facts, setUp, recording, covered, ...known }: KnownClip): OpenedClip {
  const { table, shown, measurement } = known;
  const rollDeg = measurement?.calibration?.rollDeg ?? 0;
  return {
    clip: {
      ...known,
      camera: recording && cameraOf(recording, measurement),
      body: recording && nearSideReader(recording, { table, shown, setUp, rollDeg }),
      covers: [],
    },
    facts,
    joints: recording?.joints ?? null,
    covered,
  };
}

/** How the camera moved, where that was taken out of the measures. */
function cameraOf({ disc, point }: Recording, measurement: SetMeasurement | null) {
  const camera = (measurement?.follows === 'point' ? point?.camera : null) ?? disc?.camera ?? null;
  return camera?.moves && camera.removable ? camera : null;
}
