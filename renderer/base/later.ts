/** Runs something after a while; the returned function calls it off. */
export type Later = (delayMs: number, run: () => void) => () => void;

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
