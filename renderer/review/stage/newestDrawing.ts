type DrawingOptions = {
  /** Draws a frame onto the ghost's canvas. */
  readonly draw: (frame: number) => Promise<unknown>;
  /** The frame that the canvas holds now; null = no rep comes before this one, and nothing is to be seen. */
  readonly onShown: (frame: number | null) => void;
};

type NewestDrawing = {
  /** What the ghost is to show from now on. While a frame is being drawn, only the latest wish is kept. */
  readonly want: (frame: number | null) => void;
  readonly dispose: () => void;
};

/** Keeps the ghost at the newest frame that was wanted, one drawing at a time. */
export function createNewestDrawing({ draw, onShown }: DrawingOptions): NewestDrawing {
  let wanted: number | null = null;
  let shown: number | null = null;
  let state: 'idle' | 'drawing' | 'over' = 'idle';

  const drawNewest = async (): Promise<void> => {
    state = 'drawing';
    while (wanted !== null && wanted !== shown) {
      const frame: number = wanted;
      await draw(frame);
      if (isOver()) return;
      shown = wanted === null ? null : frame;
      onShown(shown);
    }
    state = 'idle';
  };
  const isOver = (): boolean => state === 'over';

  return {
    want: (frame) => {
      wanted = frame;
      if (frame === null && shown !== null) {
        shown = null;
        onShown(null);
      }
      if (state === 'idle' && frame !== null) void drawNewest();
    },
    dispose: () => {
      state = 'over';
    },
  };
}
