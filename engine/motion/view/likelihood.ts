import type { Cue } from './cues.ts';

/** A length that shows in the picture by some share of itself, how far it differs from body to body, and what is read wrong. */
export type Expected = { readonly value: number; readonly scatter: number; readonly off: number };

/** One reading in so many has nothing to do with what it should show: it may lie anywhere within `anywhere`. */
const wrongShare = 0.05;
const anywhere = 0.6;

/**
 * How likely a cue reads as it does where `share` (−1 to 1) of the length shows; 1 where there is no cue. One that reads more
 * than the whole length shows the whole of it: the body that it is measured by points at the camera, and looks short.
 */
export function likelihood(cue: Cue, share: number, { value, scatter, off }: Expected): number {
  if (cue === null) return 1;
  const deviation = Math.hypot(off, scatter * value * share);
  const read = Math.max(-value, Math.min(value, cue.value));
  return orWrong(density((read - value * share) / deviation) / deviation);
}

/**
 * The same of a joint that bends by an amount that is not known: not at all, or as likely to any extent up to `most`. So what
 * hardly shows says little, and what shows clearly says to which side it bends.
 */
export function bendLikelihood(
  cue: Cue,
  share: number,
  { most, off }: { readonly most: number; readonly off: number },
): number {
  if (cue === null) return 1;
  const straight = density(cue.value / off) / off;
  const span = most * share;
  if (Math.abs(span) < off) return orWrong(straight);
  const bent = (below(cue.value / off) - below((cue.value - span) / off)) / span;
  return orWrong((straight + bent) / 2);
}

const orWrong = (right: number): number => (1 - wrongShare) * right + wrongShare / anywhere;

const density = (deviations: number): number => Math.exp(-(deviations ** 2) / 2) / Math.sqrt(2 * Math.PI);

/** The share of a normal distribution below a number of deviations (Abramowitz & Stegun 1964, 26.2.17). */
function below(deviations: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(deviations));
  const series = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const upper = density(deviations) * series;
  return deviations >= 0 ? 1 - upper : upper;
}
