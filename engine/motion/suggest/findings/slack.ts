/**
 * Seconds beyond the upper end of what is asked that nobody is told of: a quarter of it, at least half a second. Going
 * slower than asked costs little (common practice, no source).
 */
export const slackS = (upperS: number): number => Math.max(0.5, upperS / 4);
