import type { CameraPath, Outline, PointPx } from '../../recording/recording.ts';
import type { SetUp } from '../../recording/setUp.ts';
import { plumbAt } from '../camera/cameraPath.ts';
import { type DiscShape, rimPx } from '../disc/shape.ts';
import type { Calibration } from '../measurement.ts';
import { heightReading, usualHeight } from '../source/standingHeight.ts';

/** Tolerance of a full-size competition disc: 450 ± 1 mm (IWF rules, sport equipment). */
const discToleranceShare = 1 / 450;
/** A click on either end of a known length is good to about this. */
const clickPx = 1.5;

/** How far a camera may be turned before it is warned of, and before sideways measures are refused (chosen here, no source). */
export const offAxisLimitsDeg = { warn: 10, refuse: 20 } as const;

/** How far a camera is turned from a disc's axis, from its outline's shortest / longest diameter (0-1), in degrees. */
export function offAxisDeg(axisRatio: number): number {
  return (Math.acos(Math.min(1, Math.max(0, axisRatio))) * 180) / Math.PI;
}

/** How pixels become metres, upward and sideways, and which way is up. */
export type Scale = {
  readonly calibration: Omit<Calibration, 'cutOffHz'>;
  readonly metresPerPixelUp: number;
  readonly metresPerPixelAcross: number;
};

/**
 * The scale in the plane of the bar: from a known length if the coach gave one, else from the disc's rim. The rim is
 * measured along the upright and across it, so that a camera out of square shortens neither. Null without either.
 */
export function scaleOf({
  setUp,
  outline,
  leanDeg,
}: {
  readonly setUp: SetUp;
  readonly outline: Outline | null;
  readonly leanDeg: number | null;
}): Scale | null {
  const lean = leanDeg ?? 0;
  const { knownLength } = setUp;
  const turnedDeg = outline ? offAxisDeg(outline.axisRatio) : null;
  if (knownLength) {
    const lengthPx = Math.hypot(knownLength.to.xPx - knownLength.from.xPx, knownLength.to.yPx - knownLength.from.yPx);
    if (lengthPx < 1) return null;
    const metresPerPixel = knownLength.lengthM / lengthPx;
    const relativeUncertainty = clickPx / lengthPx;
    return {
      calibration: { from: 'knownLength', metresPerPixel, relativeUncertainty, offAxisDeg: turnedDeg, rollDeg: lean },
      metresPerPixelUp: metresPerPixel,
      metresPerPixelAcross: metresPerPixel,
    };
  }
  if (!outline) return null;
  const shape = likelyShape(outline);
  const uprightRad = ((lean - 90) * Math.PI) / 180;
  const radiusM = setUp.discDiameterM / 2;
  return {
    calibration: {
      from: 'disc',
      metresPerPixel: radiusM / shape.radiusPx,
      relativeUncertainty: Math.hypot(outline.radiusPlusMinusPx / outline.radiusPx, discToleranceShare),
      offAxisDeg: turnedDeg,
      rollDeg: lean,
    },
    metresPerPixelUp: radiusM / rimPx(shape, uprightRad),
    metresPerPixelAcross: radiusM / rimPx(shape, uprightRad + Math.PI / 2),
  };
}

/** The flattening (1 - axis ratio) that is read from a round rim by chance is below this nine times in ten, on the clips with known truth. */
const mostChanceFlattening = 0.01;

/** Mean square of the flattening that chance alone gives a round rim: none where the rim is known exactly (Rayleigh). */
function chanceFlattening({ radiusPx, radiusPlusMinusPx }: Outline): number {
  const nineInTen = Math.min(mostChanceFlattening, (4 * radiusPlusMinusPx) / radiusPx);
  return nineInTen ** 2 / Math.log(10);
}

/**
 * The disc that an outline most likely stands for. Edges that are a little off always flatten a rim, never the other way:
 * the mean square of that is taken out (as of a Rician amplitude), and the area is kept.
 */
function likelyShape(outline: Outline): DiscShape {
  const { radiusPx, axisRatio, majorAxisDeg } = outline;
  const flattening = Math.sqrt(Math.max(0, (1 - axisRatio) ** 2 - chanceFlattening(outline)));
  return {
    xPx: 0,
    yPx: 0,
    radiusPx: radiusPx * Math.sqrt(axisRatio / (1 - flattening)),
    axisRatio: 1 - flattening,
    majorAxisRad: (majorAxisDeg * Math.PI) / 180,
  };
}

/** The scale in the plane of the lifter, from the height in pixels at which the lifter stands: an adult's usual height, "about". */
export function scaleOfBody(standingPx: number, leanDeg: number | null): Scale {
  const metresPerPixel = usualHeight.metres / standingPx;
  return {
    calibration: {
      from: 'body',
      metresPerPixel,
      relativeUncertainty: Math.hypot(usualHeight.relativeUncertainty, heightReading),
      offAxisDeg: null,
      rollDeg: leanDeg ?? 0,
    },
    metresPerPixelUp: metresPerPixel,
    metresPerPixelAcross: metresPerPixel,
  };
}

/**
 * How far upright things lean where the bar is, in degrees, + = their tops to the right: as the coach drew it, else by the
 * room's own uprights; null without either.
 */
export function leanOf(
  setUp: SetUp,
  camera: CameraPath | null,
  { xPx, widthPx }: { readonly xPx: number; readonly widthPx: number },
): number | null {
  if (setUp.plumb) {
    const { top, bottom } = setUp.plumb;
    return (Math.atan2(top.xPx - bottom.xPx, bottom.yPx - top.yPx) * 180) / Math.PI;
  }
  return camera ? plumbAt(camera.uprights, xPx, widthPx) : null;
}

/** A point in pixels as metres upward and to the picture's right of an origin. */
export function inMetres(
  { metresPerPixelUp, metresPerPixelAcross, calibration }: Scale,
  at: PointPx,
  origin: PointPx,
): { readonly upM: number; readonly rightM: number } {
  const leanRad = (calibration.rollDeg * Math.PI) / 180;
  const x = at.xPx - origin.xPx;
  const y = at.yPx - origin.yPx;
  return {
    upM: (x * Math.sin(leanRad) - y * Math.cos(leanRad)) * metresPerPixelUp,
    rightM: (x * Math.cos(leanRad) + y * Math.sin(leanRad)) * metresPerPixelAcross,
  };
}
