import { type Body, type JointName, type JointRecording, jointNames, type Sighting } from '../recording/recording.ts';
import type { Box, Cover } from './cover.ts';

const headJoints: readonly JointName[] = ['nose', 'leftEye', 'rightEye', 'leftEar', 'rightEar'];
const leastSure = 0.3;
/**
 * Side of the box by the distance from shoulders to hips: a head is about 0.45 of it high (Drillis & Contini 1966: head
 * 0.13 and trunk 0.29 of the standing height); the rest is room for hair and for joints that are a little off.
 */
const sideByTrunk = 0.75;
/** Of the trunk's length over the clip: foreshortened when it leans to the camera, so not the middle. */
const trunkQuantile = 0.9;

/**
 * A cover that follows the lifter's head through some frames. Where the head can't be seen it moves on evenly to where it is
 * seen next. Null when it is never seen.
 */
export function headCover(
  joints: JointRecording,
  { firstFrame, lastFrame, look }: Pick<Cover, 'firstFrame' | 'lastFrame' | 'look'>,
): Cover | null {
  const bodies = joints.frames.slice(firstFrame, lastFrame + 1);
  const side =
    sideByTrunk *
    quantile(
      bodies.flatMap((body) => (body ? trunkPx(body) : [])),
      trunkQuantile,
    );
  if (!(side > 0)) return null;
  const places = bodies.flatMap((body, place) => {
    const head = body && headAt(body);
    return head ? [{ frame: firstFrame + place, box: boxAround(head, side) }] : [];
  });
  return places.length === 0 ? null : { firstFrame, lastFrame, look, places };
}

const sureOf = (body: Body, names: readonly JointName[]): Sighting[] =>
  names.flatMap((name) => {
    const joint = body[jointNames.indexOf(name)];
    return joint !== undefined && joint.confidence >= leastSure ? [joint] : [];
  });

const middleOf = (joints: readonly Sighting[]) => ({
  x: joints.reduce((sum, { xPx }) => sum + xPx, 0) / joints.length,
  y: joints.reduce((sum, { yPx }) => sum + yPx, 0) / joints.length,
});

function headAt(body: Body): { readonly x: number; readonly y: number } | null {
  const seen = sureOf(body, headJoints);
  return seen.length === 0 ? null : middleOf(seen);
}

function trunkPx(body: Body): number[] {
  const [shoulders, hips] = [sureOf(body, ['leftShoulder', 'rightShoulder']), sureOf(body, ['leftHip', 'rightHip'])];
  if (shoulders.length === 0 || hips.length === 0) return [];
  const [upper, lower] = [middleOf(shoulders), middleOf(hips)];
  return [Math.hypot(upper.x - lower.x, upper.y - lower.y)];
}

function quantile(values: readonly number[], share: number): number {
  const rising = [...values].sort((one, other) => one - other);
  return rising[Math.min(rising.length - 1, Math.floor(share * rising.length))] ?? 0;
}

const boxAround = ({ x, y }: { readonly x: number; readonly y: number }, side: number): Box => ({
  leftPx: x - side / 2,
  topPx: y - side / 2,
  widthPx: side,
  heightPx: side,
});
