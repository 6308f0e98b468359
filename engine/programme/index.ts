/** What a session's plan could do better, as findings with reason, suggestion and source; and the sums behind it. */
export { programmeFindings } from './findings.ts';
export { estimateOneRepMax, mostRepsForEstimate, type OneRepMax } from './oneRepMax.ts';
export { fractionalSets, type MuscleSets, volumeLoadKg, weeklyBand } from './trainingVolume.ts';
