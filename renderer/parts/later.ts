import type { Later } from '../review/player/videoLike.ts';

/** The window's own timer. */
export const later: Later = (delayMs, run) => {
  const timer = window.setTimeout(run, delayMs);
  return () => window.clearTimeout(timer);
};
