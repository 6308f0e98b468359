import type { Look, NarratedLayer, Nearness, TrackPiece } from '../../../engine/narration/narration.ts';
import type { Drawn } from '../../../engine/review/drawings/drawing.ts';

/** What is on screen at a moment. */
export type OnScreen = {
  readonly frame: number;
  readonly near: Nearness | null;
  readonly drawn: readonly Drawn[];
  readonly layers: readonly NarratedLayer[];
};

export type TrackWriter = {
  /** Notes what is on screen from a time of the sound on; what is as before is not noted again. */
  readonly note: (atUs: number, shown: OnScreen) => void;
  /** What was noted since the last time. */
  readonly take: () => TrackPiece;
};

/** The most changes in one piece; more can't come within a second from a screen. */
const mostInPiece = { frames: 5_000, looks: 1_000, shapes: 500 };

/** Writes down what is on screen while somebody speaks, piece by piece. */
export function trackWriter(): TrackWriter {
  const known = new Map<string, number>();
  let piece = emptyPiece();
  let frame: number | null = null;
  let look = '';
  let lastUs = 0;

  const indexOf = (drawn: Drawn): number | null => {
    const key = JSON.stringify(drawn);
    const before = known.get(key);
    if (before !== undefined) return before;
    if (piece.shapes.length >= mostInPiece.shapes) return null;
    const index = known.size;
    known.set(key, index);
    piece.shapes.push(drawn);
    return index;
  };

  return {
    note: (asked, shown) => {
      // Times never fall, whatever the clock does.
      const atUs = Math.max(lastUs, Math.round(asked));
      if (shown.frame !== frame && piece.frames.length < mostInPiece.frames) {
        piece.frames.push([atUs, shown.frame]);
        frame = shown.frame;
        lastUs = atUs;
      }
      const key = JSON.stringify([shown.near, shown.drawn, shown.layers]);
      if (key === look || piece.looks.length >= mostInPiece.looks) return;
      const drawn = shown.drawn.flatMap((each) => indexOf(each) ?? []);
      piece.looks.push({ atUs, near: shown.near, drawn, layers: [...shown.layers] });
      look = key;
      lastUs = atUs;
    },
    take: () => {
      const taken = piece;
      piece = emptyPiece();
      return taken;
    },
  };
}

const emptyPiece = (): { frames: [number, number][]; looks: Look[]; shapes: Drawn[] } => ({
  ...{ frames: [], looks: [], shapes: [] },
});
