import type { PointPx } from '../../recording/recording.ts';
import type { DepthOutcome, Measured } from '../measurement.ts';
import { radians } from './angles.ts';

/** The scale in the plane of the bar; null where there is none, and the body's own size has to do. */
export type PlaneScale = { readonly metresPerPixel: number; readonly relativeUncertainty: number };

export type DepthView = {
  readonly scale: PlaneScale | null;
  /** Standing height in pixels. */
  readonly heightPx: number;
  /** Height of the picture: the camera is taken to point at its middle. */
  readonly pictureHeightPx: number;
  /** How far upright things lean in the picture there, + = their tops to the right. */
  readonly rollDeg: number;
};

/**
 * How much further from the camera the hip is than the bar's disc: (D + d) / D with the near hip about 0.6 m behind the disc
 * and the camera 2.5 to 6 m away, which the picture does not tell.
 */
export const hipPlane = { factor: 1.17, relativeUncertainty: 0.07 };
/** An adult's standing height, where there is no scale: two in three are within the half-width. */
const adult = { heightM: 1.72, relativeUncertainty: 0.1 };
/** The knee is turned out towards the camera: nearer than the hip by so much of the distance (0.14 m of 3.5 m). */
const kneeNearer = { share: 0.04, plusMinusShare: 0.02 };
/** The camera's axis is within so much of the picture's height from its middle row. */
const axisWithin = 0.2;
/**
 * The network puts the hip at its crease when it is bent, and the knee in the middle of the joint, so the top of the knee is
 * higher by half a knee; fitted on rendered lifters of both sexes, whose knees and clips differ by `plusMinus`.
 */
const kneeTopOverJoint = { metres: 0.07, plusMinus: 0.047 };

/** Hip crease above the top of the knee from joints as the network puts them; negative = below it. */
export function depthByJoints(thigh: { readonly hip: PointPx; readonly knee: PointPx }, view: DepthView): Measured {
  const { m, scaleUncertaintyM, shiftM } = heightOver(thigh.hip, thigh.knee, view);
  const pixelM = 2 * metresPerPixelAtHip(view);
  return {
    value: m - kneeTopOverJoint.metres,
    plusMinus: Math.hypot(pixelM, shiftM, scaleUncertaintyM, kneeTopOverJoint.plusMinus),
  };
}

/** The same from hip crease and top of the knee as a person clicked them. */
export function depthByClicks(
  clicked: { readonly hipCrease: PointPx; readonly kneeTop: PointPx },
  view: DepthView,
): Measured {
  const { m, scaleUncertaintyM, shiftM } = heightOver(clicked.hipCrease, clicked.kneeTop, view);
  const plusMinus = depthUncertaintyM({ metresPerPixel: metresPerPixelAtHip(view), shiftM });
  return { value: m, plusMinus: Math.hypot(plusMinus, scaleUncertaintyM) };
}

/** Three outcomes: a depth nearer to level than its uncertainty is not called. */
export function outcomeOf({ value, plusMinus }: Measured): DepthOutcome {
  if (value <= -plusMinus) return 'reached';
  return value >= plusMinus ? 'short' : 'tooClose';
}

/** How far the hip is above the knee, without the shift that the knee's nearer plane makes under a camera that is higher or lower. */
function heightOver(hip: PointPx, knee: PointPx, view: DepthView) {
  const lean = radians(view.rollDeg);
  const overPx = (hip.xPx - knee.xPx) * Math.sin(lean) - (hip.yPx - knee.yPx) * Math.cos(lean);
  const belowAxisPx = knee.yPx - view.pictureHeightPx / 2;
  const metresPerPixel = metresPerPixelAtHip(view);
  const m = (overPx - belowAxisPx * kneeNearer.share) * metresPerPixel;
  const shiftPx = Math.hypot(
    belowAxisPx * kneeNearer.plusMinusShare,
    axisWithin * view.pictureHeightPx * kneeNearer.share,
  );
  return { m, shiftM: shiftPx * metresPerPixel, scaleUncertaintyM: Math.abs(m) * scaleUncertainty(view) };
}

function metresPerPixelAtHip({ scale, heightPx }: DepthView): number {
  return scale === null ? adult.heightM / heightPx : scale.metresPerPixel * hipPlane.factor;
}

function scaleUncertainty({ scale }: DepthView): number {
  return scale === null
    ? adult.relativeUncertainty
    : Math.hypot(scale.relativeUncertainty, hipPlane.relativeUncertainty);
}

/**
 * Uncertainty of a depth (hip crease over top of the knee) in metres: two pixels of marking, the shift between the two
 * points' planes, and 20 mm for choosing the landmarks (chosen here, no source).
 */
export function depthUncertaintyM(from: { readonly metresPerPixel: number; readonly shiftM: number }): number {
  return Math.hypot(2 * from.metresPerPixel, from.shiftM, 0.02);
}
