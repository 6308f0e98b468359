/* What passes, and what counts as a small miss: common practice, no source, unless said. */

/** Times of one phase in one set may differ by half a second, or a quarter of the longest. */
export const spreadLimitS = (longestS: number): number => Math.max(0.5, 0.25 * longestS);

/** A time missed by 0.3 s, or by 15 % of the limit, is missed by little. */
export const smallMissS = (limitS: number): number => Math.max(0.3, 0.15 * limitS);

/** Ranges of one set may differ by 1 cm, or 6 % of the longest: 3 cm of a squat. */
export const rangeLimitM = (longestM: number): number => Math.max(0.01, 0.06 * longestM);
export const smallRangeMissM = 0.02;

/** Reps of one set may turn so far from each other at one end, in percent of the range; and so much more is little. */
export const reachLimitPct = 6;
export const smallReachMissPct = 4;

/** Hip crease above the top of the knee. */
export const smallDepthMissM = 0.02;

/** A load that dips by 1 cm on its way up hardly shows on film. */
export const dipLimitM = 0.01;
export const smallDipMissM = 0.01;

/** Beyond the tolerance by up to a half of it. */
export const smallPathMissM = (toleranceM: number): number => 0.5 * toleranceM;

/** Joint angles are no better than this. */
export const smallHeadMissDeg = 10;

/** Speed lost between two peaks of one eccentric, in percent of the lower peak. */
export const dipLimitPct = 50;
export const smallDipMissPct = 15;

/** The share of its time that the last third of an eccentric takes at least, unless it drops; an even pace takes 33 %. */
export const dropLimitPct = 20;
export const smallDropMissPct = 5;
