/** Motion: from what was seen in each frame to reps, times, speeds, angles, and the flags they propose. */
export * from './measurement.ts';
export * from './picture.ts';
export * from './recording.ts';
export * from './setUp.ts';
