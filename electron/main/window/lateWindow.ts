/** How long the page may take until it has drawn itself; it takes a second or two. */
export const mostDrawingMs = 60_000;

/** What of a window this needs. */
export type DrawnWindow = {
  readonly onDrawn: (listener: () => void) => void;
  readonly onClosed: (listener: () => void) => void;
  readonly isDestroyed: () => boolean;
  readonly show: () => void;
};

/**
 * Shows a window when its page has drawn itself. One that has not done so within the limit is shown all the same, and told of: a program without
 * a window would be in nobody's hands.
 */
export function showWhenDrawn(
  window: DrawnWindow,
  { limitMs, onLate }: { readonly limitMs: number; readonly onLate: () => void },
): void {
  const late = setTimeout(() => {
    if (window.isDestroyed()) return;
    window.show();
    onLate();
  }, limitMs);
  window.onDrawn(() => {
    clearTimeout(late);
    window.show();
  });
  window.onClosed(() => clearTimeout(late));
}
