/** What became of a trainee's faults since earlier sessions, and their grades over time. */
export { compareSessions, type FaultChange, type FaultLoad } from './compareSessions.ts';
export { type TrendPoint, trendOf } from './trend.ts';
