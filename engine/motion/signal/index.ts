/** Signals on an even grid of time: laid there, smoothed without delay, derived, and judged for their noise. Times in seconds, rates in hertz. */
export { type ButterworthCoefficients, butterworthCoefficients, passCorrection, singlePass } from './butterworth.ts';
export { type EvenGrid, knownRuns, offGrid, onEvenGrid, overRuns } from './evenGrid.ts';
export { lowPass } from './lowPass.ts';
export { noiseSd } from './noise.ts';
export { cutOffRangeHz, residualCutOffHz } from './residual.ts';
export { type SavitzkyGolayWindow, savitzkyGolay, savitzkyGolayWeights } from './savitzkyGolay.ts';
export { splineThrough } from './spline.ts';
