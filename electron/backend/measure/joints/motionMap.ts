import type { PointPx } from '../../../../engine/recording/recording.ts';
import type { Picture } from './networkPicture.ts';
import type { Size } from './resample.ts';

/** Where in the pictures of a clip something moves, found without knowing what. */
export type MotionMap = {
  readonly add: (picture: Pick<Picture, 'bytes'>) => void;
  /** The middle of what moves most; null when nothing does, or the whole picture. */
  readonly middle: () => PointPx | null;
};

/** Cells along the long side, and pixels along each side of a cell that are taken. */
const cellsAcross = 48;
const samples = 4;
/** A cell moves when its grey varies by so much, as a standard deviation, and by such a share of what the liveliest varies. */
const least = { grey: 8, ofMost: 0.5 };
/** More of the picture than this moves with the camera. */
const mostOfPicture = 0.25;

/** A map of how much the grey of each part of the picture varies through a clip. */
export function motionMap({ width, height }: Size): MotionMap {
  const cellPx = Math.max(1, Math.max(width, height) / cellsAcross);
  const across = Math.max(1, Math.floor(width / cellPx));
  const down = Math.max(1, Math.floor(height / cellPx));
  const sums = new Float64Array(across * down);
  const squares = new Float64Array(across * down);
  let pictures = 0;
  return {
    add: ({ bytes }) => {
      pictures += 1;
      for (let cell = 0; cell < sums.length; cell += 1) {
        const grey = greyOfCell(bytes, width, {
          leftPx: (cell % across) * cellPx,
          topPx: Math.floor(cell / across) * cellPx,
          sidePx: cellPx,
        });
        sums[cell] = (sums[cell] ?? 0) + grey;
        squares[cell] = (squares[cell] ?? 0) + grey * grey;
      }
    },
    middle: () => {
      const varies = Array.from(sums, (sum, cell) => {
        const mean = sum / Math.max(1, pictures);
        return Math.sqrt(Math.max(0, (squares[cell] ?? 0) / Math.max(1, pictures) - mean * mean));
      });
      const most = Math.max(...varies);
      const lively = varies.flatMap((grey, cell) => (grey >= least.ofMost * most ? [{ grey, cell }] : []));
      if (most < least.grey || lively.length > mostOfPicture * varies.length) return null;
      const weight = lively.reduce((sum, { grey }) => sum + grey, 0);
      const middle = (along: (cell: number) => number) =>
        (lively.reduce((sum, { grey, cell }) => sum + grey * (along(cell) + 0.5), 0) / weight) * cellPx;
      return { xPx: middle((cell) => cell % across), yPx: middle((cell) => Math.floor(cell / across)) };
    },
  };
}

type Cell = { readonly leftPx: number; readonly topPx: number; readonly sidePx: number };

/** Mean grey of a few pixels of a cell. */
function greyOfCell(bytes: Uint8Array, width: number, { leftPx, topPx, sidePx }: Cell): number {
  let sum = 0;
  for (let y = 0; y < samples; y += 1) {
    const row = Math.floor(topPx + ((y + 0.5) * sidePx) / samples) * width;
    for (let x = 0; x < samples; x += 1) sum += bytes[row + Math.floor(leftPx + ((x + 0.5) * sidePx) / samples)] ?? 0;
  }
  return sum / samples ** 2;
}
