import type { PhaseName, RepMeasurement, Span } from '../measurement.ts';

const middle = ({ startS, endS }: Span): number => (startS + endS) / 2;

/** The middle of a phase, in media seconds; that of the rep where the phase is not there. */
export const duringPhase = (rep: RepMeasurement, phase: PhaseName): number => middle(rep.phases[phase] ?? rep);

/** When the target muscles are longest, in media seconds: within the pause, or where the load turns round. */
export function atLongEnd(rep: RepMeasurement): number {
  const { longPause, eccentric, concentric } = rep.phases;
  if (longPause) return middle(longPause);
  return eccentric?.endS ?? concentric?.startS ?? middle(rep);
}

/** When the target muscles are shortest, in media seconds. */
export function atShortEnd(rep: RepMeasurement): number {
  const { shortPause, concentric, eccentric } = rep.phases;
  if (shortPause) return middle(shortPause);
  return concentric?.endS ?? eccentric?.startS ?? middle(rep);
}
