import type { CameraPath, PointPx } from '../../recording/recording.ts';
import { steadied, unsteadied } from '../camera/cameraPath.ts';
import { quantile } from '../signal/quantile.ts';
import { bendDeg, type Facing, forward, radians } from './angles.ts';
import type { SeenJoint } from './nearSide.ts';
import { distancePx, medianPoint } from './points.ts';

/**
 * How far the network puts the hip in front of the joint's centre, square to the thigh, in lengths of the thigh: people who
 * label pictures mark the hip at the skin, and the more the hip is bent the more they mark the crease. Fitted on rendered
 * lifters of known joint centres; leaving out any one clip changes `bent` by no more than 0.02, and from clip to
 * clip the hip itself differs by 0.04.
 */
const hipInFront = { standing: 0.035, bent: 0.085 };

/** The centre of the hip joint, from the hip as the network puts it. */
export function hipCentre(hip: PointPx, knee: PointPx, shoulder: PointPx, facing: Facing): PointPx {
  const thighPx = distancePx(hip, knee);
  if (thighPx === 0) return hip;
  const bent = Math.sin(radians(Math.min(90, bendDeg(shoulder, hip, knee))));
  const inFront = hipInFront.standing + hipInFront.bent * bent;
  return {
    xPx: hip.xPx - inFront * forward(facing) * (knee.yPx - hip.yPx),
    yPx: hip.yPx + inFront * forward(facing) * (knee.xPx - hip.xPx),
  };
}

/**
 * The knee from hip, ankle and the lengths of thigh and shank, bent to the front; null when they can't meet.
 * The lengths hold in the picture as long as the leg moves square to the camera.
 */
export function kneeBetween(
  hip: PointPx,
  ankle: PointPx,
  lengths: { readonly thighPx: number; readonly shankPx: number },
  facing: Facing,
): PointPx | null {
  const apart = distancePx(hip, ankle);
  if (apart === 0 || apart < Math.abs(lengths.thighPx - lengths.shankPx)) return null;
  const along = (apart ** 2 + lengths.thighPx ** 2 - lengths.shankPx ** 2) / (2 * apart);
  const across = Math.sqrt(Math.max(0, lengths.thighPx ** 2 - along ** 2));
  const x = (ankle.xPx - hip.xPx) / apart;
  const y = (ankle.yPx - hip.yPx) / apart;
  return {
    xPx: hip.xPx + along * x + across * forward(facing) * y,
    yPx: hip.yPx + along * y - across * forward(facing) * x,
  };
}

/** A foot stands when the ankle keeps within this share of the body's height in most frames that show it. */
const plantedFoot = { ofHeight: 0.05, share: 0.8, leastFrames: 5 };

/**
 * Where the ankle is in each frame, even where the disc hides it, when the foot stands in one place through the clip; null
 * when it moves, is hardly seen, or the camera moves in a way that can't be taken out.
 */
export function plantedAnkle(
  ankles: readonly (SeenJoint | null)[],
  { heightPx, camera }: { readonly heightPx: number; readonly camera: CameraPath | null },
): ((frame: number) => PointPx) | null {
  if (camera?.moves && !camera.removable) return null;
  const seen = ankles.flatMap((ankle, frame) =>
    ankle?.visibility === 'seen' ? [steadied(camera, frame, ankle.point)] : [],
  );
  const middle = medianPoint(seen);
  if (middle === null || seen.length < plantedFoot.leastFrames) return null;
  const strayPx = quantile(
    seen.map((point) => distancePx(point, middle)),
    plantedFoot.share,
  );
  if (strayPx > plantedFoot.ofHeight * heightPx) return null;
  return (frame) => unsteadied(camera, frame, middle);
}
