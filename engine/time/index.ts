/** Exact time: frame tables, lifting time, tempo, and the ways to write a time. */
export { type CheckedFrameTable, checkFrameTable } from './checkFrameTable.ts';
export { formatClock, parseClock } from './clock.ts';
export { formatDurationS, isDuration, parseDurationS } from './duration.ts';
export { frameAtUs, frameEndUs, frameStartUs, nearestFrame, seekTargetUs, stepFrame } from './frames.ts';
export * from './frameTable.ts';
export { liftingToMediaUs, mediaToLiftingUs } from './liftingTime.ts';
export { fragmentWithin, parseTimeFragment, printTimeFragment, type TimeFragment } from './mediaFragment.ts';
export { divideHalfUp, ticksToUs, usToTicks } from './microseconds.ts';
export { constantRate, meanFps } from './rate.ts';
export { parseTempo, printTempo, repSeconds, type Tempo, timeUnderTensionS } from './tempo.ts';
export { formatTimecode, framesPerDay, parseTimecode, type TimecodeRate, timecodeRateFor } from './timecode.ts';
