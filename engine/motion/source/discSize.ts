import type { DiscRecording, JointRecording } from '../../recording/recording.ts';
import type { SetUp } from '../../recording/setUp.ts';
import { hipPlane } from '../joints/depth.ts';
import { bodyHeightPx } from '../joints/lifter.ts';
import { standingHeightPx } from './standingHeight.ts';

/** A lifter's standing height, generously. */
export const believableHeightM = { least: 1.2, most: 2.3 } as const;

/**
 * Whether a disc, taken for as large as the set-up says, leaves the lifter a believable height, be it the near disc or the
 * far one. Somebody who is never seen standing may look shorter than they are, so only a giant tells against the disc then.
 */
export function isOfLikelySize(
  { outline }: Pick<DiscRecording, 'outline'>,
  joints: JointRecording,
  { discDiameterM }: Pick<SetUp, 'discDiameterM'>,
): boolean {
  const metresPerPixel = discDiameterM / 2 / outline.radiusPx;
  const standingPx = standingHeightPx(joints);
  const heightPx = standingPx ?? bodyHeightPx(joints);
  if (heightPx === null) return true;
  const heightM = heightPx * metresPerPixel;
  if (heightM / hipPlane.factor > believableHeightM.most) return false;
  return standingPx === null || heightM * hipPlane.factor >= believableHeightM.least;
}
