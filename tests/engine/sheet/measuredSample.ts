import type { RepJoints, RepMeasurement, SetMeasurement } from '../../../engine/motion/measurement.ts';

const joints: RepJoints = {
  kneeDeg: null,
  hipDeg: null,
  trunkLeanDeg: null,
  shankLeanDeg: null,
  trunkLeanMaxDeg: null,
  headTrunkDeg: null,
  depthM: { value: -0.043, plusMinus: 0.012 },
  depthOutcome: 'reached',
  depthFrom: 'joints',
  backChangeDeg: null,
  unseen: [],
};

/** A rep of four seconds as it may be measured: 2.1 s down, 0.4 s at the bottom, 1.2 s up, over 54.8 cm. */
export function measuredRep(index: number, change: Partial<RepMeasurement> = {}): RepMeasurement {
  const startS = 1 + (index - 1) * 5;
  return {
    index,
    startS,
    endS: startS + 4,
    phases: {
      eccentric: { startS, endS: startS + 2.1 },
      pauseStretched: { startS: startS + 2.1, endS: startS + 2.5 },
      concentric: { startS: startS + 2.5, endS: startS + 3.7 },
      pauseShortened: null,
    },
    durationsS: {
      eccentric: { value: 2.1, plusMinus: 0.05 },
      pauseStretched: { value: 0.4, plusMinus: 0.05 },
      concentric: { value: 1.2, plusMinus: 0.05 },
      pauseShortened: null,
    },
    sureness: 1,
    doubts: [],
    manualEdges: [],
    reach: null,
    romM: { value: 0.548, plusMinus: 0.011 },
    meanConcentricMps: { value: 0.457, plusMinus: 0.01 },
    peakConcentricMps: { value: 0.81, plusMinus: 0.02 },
    peakSpeedAtS: startS + 3,
    driftForwardM: { value: 0.031, plusMinus: 0.005 },
    driftBackM: { value: 0.008, plusMinus: 0.0001 },
    largestDeviation: null,
    bounces: 1,
    downOnWayUpM: null,
    joints,
    ...change,
  };
}

/** A set of some reps. */
export function measuredSet(reps: readonly RepMeasurement[], change: Partial<SetMeasurement> = {}): SetMeasurement {
  return {
    calibration: null,
    follows: 'disc',
    followsBecause: 'discMovesWithLifter',
    track: { frames: 900, lost: 0, meanConfidence: 0.9 },
    facing: 'left',
    nearSide: 'left',
    view: null,
    reps,
    offered: [],
    set: { speedLossPct: null, romSpreadM: null, eccentricSpreadS: null },
    curves: { timesS: [], positionPx: [], heightM: [], forwardM: [], speedMps: [], heightPlusMinusM: null },
    warnings: [],
    ...change,
  };
}
