import type { View } from '../../../../../engine/exercises/exercise.ts';
import { type NearSide, nearSideJoints } from '../../../../../engine/handover/nearSide.ts';
import { bodyOfSet } from '../../../../../engine/motion/set/bodyOfSet.ts';
import { readView } from '../../../../../engine/motion/view/readView.ts';
import type { Recording } from '../../../../../engine/recording/recording.ts';
import type { SetUp } from '../../../../../engine/recording/setUp.ts';
import type { Point } from '../../../../../engine/review/drawings/drawing.ts';
import { frameStartUs } from '../../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../../engine/time/frameTable.ts';
import type { PictureSize } from '../../../media/probe/streams.ts';

/** Reads the near side of any frame from what was recorded of a clip; null when nobody was seen in it. */
export function nearSideReader(
  recording: Recording,
  {
    table,
    shown,
    setUp,
    view,
    rollDeg,
  }: {
    readonly table: FrameTable;
    readonly shown: PictureSize;
    readonly setUp: SetUp;
    /** As the coach chose it; null = as the joints show it. */
    readonly view: View | null;
    /** The camera's roll that was taken out of the measures; 0 when none is known. */
    readonly rollDeg: number;
  },
): ((frame: number) => NearSide | null) | null {
  const zeroUs = frameStartUs(table, 0);
  const mediaTimesS = table.ticks.map((_, frame) => (frameStartUs(table, frame) - zeroUs) / 1_000_000);
  const read = recording.joints && readView(recording.joints);
  const body = bodyOfSet({ recording, setUp, shown, mediaTimesS, view, read }, rollDeg);
  if (body === null) return null;
  const { points, visibility } = body.track;
  return (frame) => {
    const [shoulder = null, hip = null, knee = null, ankle = null] = nearSideJoints.map((part): Point | null => {
      const place = points[part][frame];
      const sight = visibility[part][frame];
      return place != null && (sight === 'seen' || sight === 'behindDisc') ? { x: place.xPx, y: place.yPx } : null;
    });
    const posture = body.posture.at(frame);
    const readOff = (reading: typeof posture.knee) => (body.isFromSide && 'value' in reading ? reading.value : null);
    const angles = { kneeDeg: readOff(posture.knee), trunkLeanDeg: readOff(posture.trunkLean) };
    return { shoulder, hip, knee, ankle, ...angles };
  };
}
