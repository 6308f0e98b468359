import type { Later } from '../review/player/videoLike.ts';

/** The window's own timer. */
export const later: Later = (delayMs, run) => {
  const timer = window.setTimeout(run, delayMs);
  return () => window.clearTimeout(timer);
};

/** Calls back once a screen refresh until it is called off. */
export function everyRefresh(run: () => void): () => void {
  let handle = 0;
  const again = (): void => {
    handle = window.requestAnimationFrame(again);
    run();
  };
  handle = window.requestAnimationFrame(again);
  return () => window.cancelAnimationFrame(handle);
}
