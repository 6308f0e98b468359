/** Media times are of the clip's own clock; a slow-motion clip's clock runs slower than the lift. */
export type CameraClock = { readonly realTimeFactor: number };

/**
 * How much later a moment stands on one camera's clock than on the other's, in microseconds of real time, from the same moment
 * in media microseconds on both.
 */
export function offsetBetween(
  { us: leadUs, realTimeFactor: leadFactor }: CameraClock & { readonly us: number },
  { us, realTimeFactor }: CameraClock & { readonly us: number },
): number {
  return Math.round(us / realTimeFactor - leadUs / leadFactor);
}

/** A moment of the lead's clip on the other camera's clock, in media microseconds. */
export function onOtherCamera(leadUs: number, lead: CameraClock, other: CameraClock, offsetUs: number): number {
  return Math.round((leadUs / lead.realTimeFactor + offsetUs) * other.realTimeFactor);
}

/** A moment of the other camera's clip on the lead's clock, in media microseconds. */
export function onLeadCamera(otherUs: number, lead: CameraClock, other: CameraClock, offsetUs: number): number {
  return Math.round((otherUs / other.realTimeFactor - offsetUs) * lead.realTimeFactor);
}
