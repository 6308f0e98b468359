import type { RepMeasurement } from '../../../../engine/motion/measurement.ts';

/** A rep of a squat of invented measures, as a base for others. */
export const rep: RepMeasurement = {
  index: 1,
  startS: 1,
  endS: 4.6,
  phases: {
    eccentric: { startS: 1, endS: 3 },
    pauseStretched: { startS: 3, endS: 3.4 },
    concentric: { startS: 3.4, endS: 4.6 },
    pauseShortened: null,
  },
  durationsS: {
    eccentric: { value: 2, plusMinus: 0.03 },
    pauseStretched: { value: 0.4, plusMinus: 0.04 },
    concentric: { value: 1.2, plusMinus: 0.03 },
    pauseShortened: null,
  },
  sureness: 1,
  doubts: [],
  manualEdges: [],
  reach: null,
  romM: { value: 0.5291, plusMinus: 0.0042 },
  meanConcentricMps: { value: 0.441, plusMinus: 0.01 },
  peakConcentricMps: { value: 0.83, plusMinus: 0.012 },
  peakSpeedAtS: 4.1,
  driftForwardM: { value: 0.031, plusMinus: 0.004 },
  driftBackM: { value: 0, plusMinus: 0.004 },
  largestDeviation: { m: { value: 0.031, plusMinus: 0.004 }, atS: 3.9, heightShare: 0.4 },
  bounces: 1,
  downOnWayUpM: { value: 0.001, plusMinus: 0.002 },
  joints: null,
};
