import type { CameraPath, PointPx } from '../../recording/recording.ts';
import { steadied, unsteadied } from '../camera/steadied.ts';
import { distancePx, middleOf, quantile } from './places.ts';
import type { SeenJoint } from './visibility.ts';

/** A foot stands when the ankle keeps within this share of the body's height in most frames that show it. */
const stands = { ofHeight: 0.05, share: 0.8, leastFrames: 5 };

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
    ankle?.visibility === 'seen' ? [steadied(camera, frame, ankle.place)] : [],
  );
  const middle = middleOf(seen);
  if (middle === null || seen.length < stands.leastFrames) return null;
  const strayPx = quantile(
    seen.map((place) => distancePx(place, middle)),
    stands.share,
  );
  if (strayPx > stands.ofHeight * heightPx) return null;
  return (frame) => unsteadied(camera, frame, middle);
}
