import type { Exercise } from '../../exercises/exercise.ts';

/** What a rep of an exercise may cover, in the curve's unit; `most` null where the lifter's size is not known. */
export type RangeLimits = { readonly least: number; readonly most: number | null };

/**
 * What a rep covers at least and at most, as shares of the lifter's standing height. The least is more than a body sways, the
 * most what limbs allow: shank and thigh are 0.491 of the height, the arm with half the hand 0.386, the trunk 0.288 (Drillis
 * & Contini 1966).
 */
const sharesOfPattern: Readonly<Record<string, readonly [least: number, most: number]>> = {
  squat: [0.08, 0.6],
  lunge: [0.08, 0.6],
  hinge: [0.08, 0.6],
  'vertical press': [0.08, 0.6],
  'olympic lift': [0.08, 1.3],
  'vertical pull': [0.08, 0.6],
  'horizontal press': [0.05, 0.5],
  'calf raise': [0.025, 0.2],
};
const sharesOfOthers = [0.05, 0.8] as const;
/** The height of a lifter whose size in the picture is not known, in metres. */
const usualHeightM = 1.7;
/** A movement this many standard deviations of the noise is more than noise. */
const leastNoises = 10;
/** Where nothing tells the size, a rep covers a good part of all that the load covers, and this many pixels. */
const ofUnknownSize = { share: 0.25, px: 6 } as const;

export type SizeKnown = {
  /** The lifter's standing height in the curve's unit; null where it is not known. */
  readonly bodyHeight: number | null;
  readonly inMetres: boolean;
  /** Standard deviation of the places seen, in the curve's unit. */
  readonly noise: number;
  /** From the lowest to the highest that the load was seen. */
  readonly whole: number;
};

/** The limits in the curve's unit. */
export function rangeLimits(
  { pattern }: Pick<Exercise, 'pattern'>,
  { bodyHeight, inMetres, noise, whole }: SizeKnown,
): RangeLimits {
  const [least, most] = sharesOfPattern[pattern] ?? sharesOfOthers;
  const height = bodyHeight ?? (inMetres ? usualHeightM : null);
  const bySize = height === null ? Math.max(ofUnknownSize.share * whole, ofUnknownSize.px) : least * height;
  return { least: Math.max(bySize, leastNoises * noise), most: height === null ? null : most * height };
}
