import type { View } from '../exercises/exercise.ts';
import type { Warning } from '../recording/warnings.ts';

/** A number with the half-width of its interval: the truth lies within `value ± plusMinus` nine times in ten or more. */
export type Measured = { readonly value: number; readonly plusMinus: number };

/** A stretch of media time, in seconds from the clip's first frame. */
export type Span = { readonly startS: number; readonly endS: number };

/** Phases of one rep in media time; null = the exercise or the clip has none (the last pause at the shortened end, say). */
export type PhaseSpans = {
  readonly eccentric: Span | null;
  readonly pauseStretched: Span | null;
  readonly concentric: Span | null;
  readonly pauseShortened: Span | null;
};
export type PhaseName = keyof PhaseSpans;

/** Three outcomes: a depth nearer to level than its uncertainty is not called. */
export type DepthOutcome = 'reached' | 'tooClose' | 'short';

/** A joint that can't be seen in a rep, why, and what can't be known because of it. */
export type Unseen = {
  readonly part: 'nose' | 'ear' | 'shoulder' | 'elbow' | 'wrist' | 'hip' | 'knee' | 'ankle';
  readonly why: 'behindDisc' | 'outOfFrame' | 'unclear';
  readonly lost: readonly ('knee' | 'hip' | 'trunkLean' | 'head')[];
};

/** What the joints say of one rep; null = it can't be seen, `unseen` says why. Angles in degrees, 0 = straight or upright. */
export type RepJoints = {
  /** At the stretched end. */
  readonly kneeDeg: Measured | null;
  readonly hipDeg: Measured | null;
  readonly trunkLeanDeg: Measured | null;
  readonly shankLeanDeg: Measured | null;
  /** Largest lean of the trunk in the rep. */
  readonly trunkLeanMaxDeg: Measured | null;
  /** Largest change of the head against the trunk since the set-up frame; + = chin down. */
  readonly headTrunkDeg: Measured | null;
  /** Hip crease above the top of the knee at the lowest frame, in metres; negative = below it. */
  readonly depthM: Measured | null;
  readonly depthOutcome: DepthOutcome | null;
  /** Where the depth comes from. */
  readonly depthFrom: 'joints' | 'clicks' | null;
  /** Change of the back's shape since set-up, from three clicked points; null without clicks. */
  readonly backChangeDeg: Measured | null;
  readonly unseen: readonly Unseen[];
};

/**
 * Why a movement may be no rep: the clip begins or ends in it; it covers much less than the others; the load went back before
 * the way up was done; it looks like picking the load up before the set, or putting it down after; it ends at another height
 * than the reps; too little of it was seen; it is hardly more than the sway of a body that
 * stands still; the hands move as in a gesture; or too little in the clip is like it.
 */
export type RepDoubt =
  | 'cutOffAtStart'
  | 'cutOffAtEnd'
  | 'short'
  | 'failed'
  | 'maybeSetUp'
  | 'maybePutDown'
  | 'otherHeight'
  | 'poorlySeen'
  | 'nearSway'
  | 'gesture'
  | 'unlike';

/** What is said of movements that don't count. */
export type OfferedMessageId = RepDoubt | 'notCounted';

/**
 * How far a rep went towards either end, in shares of the set's longest range, from the middle of the set: two reps compare
 * without any scale. Larger = further towards that end.
 */
export type Reach = { readonly stretched: Measured; readonly shortened: Measured };

/** One rep as measured. Times of `phases` in media time, durations in lifting time. */
export type RepMeasurement = {
  readonly index: number;
  readonly startS: number;
  readonly endS: number;
  readonly phases: PhaseSpans;
  /** Lifting seconds; a pause that isn't there is 0. */
  readonly durationsS: Readonly<Record<PhaseName, Measured | null>>;
  /** How sure it is that this is a rep, 0-1, and what speaks against it. One that a person set is sure. */
  readonly sureness: number;
  readonly doubts: readonly RepDoubt[];
  /** Which edges a person set. */
  readonly manualEdges: readonly ('start' | 'stretchedEnd' | 'end')[];
  /** Null without a scale. */
  readonly romM: Measured | null;
  /** Null where the load has no upper and lower end. */
  readonly reach: Reach | null;
  readonly meanConcentricMps: Measured | null;
  readonly peakConcentricMps: Measured | null;
  /** Media time of the highest concentric speed. */
  readonly peakSpeedAtS: number | null;
  /** Furthest in front of and behind the exercise's expected path; null where the camera can't tell. */
  readonly driftForwardM: Measured | null;
  readonly driftBackM: Measured | null;
  /** Furthest from the expected path, + = forward, and the media time and share of the range (0 = lower end) where. */
  readonly largestDeviation: { readonly m: Measured; readonly atS: number; readonly heightShare: number } | null;
  /** How often the load turned round within the lowest part of the range: 1 = once, as it should. */
  readonly bounces: number | null;
  /** Furthest downward movement of the load on its way up. */
  readonly downOnWayUpM: Measured | null;
  readonly joints: RepJoints | null;
};

/** What one set has beyond its reps; null with fewer than two reps. */
export type SetSummary = {
  /** 100 × (fastest rep − last rep) / fastest rep, of mean concentric speed (Sánchez-Medina & González-Badillo 2011). */
  readonly speedLossPct: Measured | null;
  /** Standard deviations over the reps. */
  readonly romSpreadM: number | null;
  readonly eccentricSpreadS: number | null;
};

/** One sample a frame, for curves and paths; null = not seen. Heights in metres over the first frame's, + = up. */
export type Curves = {
  /** Media seconds of each frame. */
  readonly timesS: readonly number[];
  /** Smoothed place of the tracked point in pixels of the upright picture of that frame. */
  readonly positionPx: readonly ({ readonly xPx: number; readonly yPx: number } | null)[];
  readonly heightM: readonly (number | null)[];
  /** + = forward, from the first frame's. */
  readonly forwardM: readonly (number | null)[];
  /** Upward speed. */
  readonly speedMps: readonly (number | null)[];
  /** Half-width of a height against others nearby, whatever the scale; null without a scale. */
  readonly heightPlusMinusM: number | null;
};

/** The last frame of a set's curves that is not after a moment, in media seconds; 0 before all of them. */
export function frameAtSeconds(timesS: readonly number[], seconds: number): number {
  let low = 0;
  let high = timesS.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((timesS[middle] ?? 0) <= seconds + 1e-6) low = middle;
    else high = middle - 1;
  }
  return low;
}

export type Calibration = {
  /** `body`: from the lifter's own size, so that lengths are "about" only. */
  readonly from: 'disc' | 'knownLength' | 'body';
  readonly metresPerPixel: number;
  /** Half-width of the interval / value. */
  readonly relativeUncertainty: number;
  /** How far the camera is turned out of square; null when unknown. */
  readonly offAxisDeg: number | null;
  /** Roll of the camera that was taken out; 0 when none is known. */
  readonly rollDeg: number;
  readonly cutOffHz: number;
};

/** Where the camera stands, as the joints show it. */
export type ViewRead = {
  readonly view: View;
  /** Which way the lifter faces in the picture; null where it can't be told, as from straight in front. */
  readonly facing: 'left' | 'right' | null;
  /** How far the camera is round the lifter: 0 = in front, 90 = at the side, 180 = behind. */
  readonly azimuthDeg: Measured;
  /** 0-1: how sure the view is. */
  readonly sureness: number;
};

/** Parts of the body that can stand for the load. */
export const followedParts = ['hands', 'shoulders', 'hips', 'head', 'legs'] as const;
export type FollowedPart = (typeof followedParts)[number];

/** What shows where the load is through a clip. */
export type Follows = 'disc' | 'point' | FollowedPart | 'nothing';

/** Why this is followed and not what would be better. */
export type FollowReason =
  /** The coach clicked it, or said so. */
  | 'clicked'
  | 'chosen'
  /** A disc that moves with the lifter; or one that nothing could be held against. */
  | 'discMovesWithLifter'
  | 'discUnchecked'
  /** Why not a disc. */
  | 'noDisc'
  | 'discStandsStill'
  | 'discMovesOtherwise'
  | 'discSeldomSeen'
  | 'discOfUnlikelySize'
  | 'noDiscExpected'
  | 'nothingSeen';

/** Everything measured of one clip. */
export type SetMeasurement = {
  readonly calibration: Calibration | null;
  /** What was followed, and why. */
  readonly follows: Follows;
  readonly followsBecause: FollowReason;
  readonly track: { readonly frames: number; readonly lost: number; readonly meanConfidence: number };
  readonly facing: 'left' | 'right' | null;
  readonly nearSide: 'left' | 'right' | null;
  /** Read from the joints, whatever view the coach chose; null where it can't be told. */
  readonly view: ViewRead | null;
  /** The reps that count. */
  readonly reps: readonly RepMeasurement[];
  /** Movements that may be reps and don't count, in order, with an index of their own from 1; a person may take them in. */
  readonly offered: readonly RepMeasurement[];
  readonly set: SetSummary;
  readonly curves: Curves;
  /** What a person should know before reading the numbers. */
  readonly warnings: readonly Warning[];
};
