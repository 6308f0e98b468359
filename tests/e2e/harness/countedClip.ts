import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { path as bundled } from '@ffmpeg-installer/ffmpeg';

export type CountedClip = {
  readonly name: string;
  /** As ffmpeg takes it: "30000/1001". */
  readonly rate: string;
  readonly frames: number;
  /** Every nth frame is left out, for a rate that varies; 0 for a constant one. */
  readonly leaveOut: number;
  readonly turned: 'no' | 'quarter';
};

const bits = 12;
const barPx = 32;
const width = bits * barPx;
const height = 240;

/**
 * Makes a clip whose frames carry their own number in the picture, as twelve bars that are white for one and black for
 * nought, so that what is shown can be told from the picture alone.
 */
export async function makeCountedClip({ rate, frames, leaveOut, turned }: CountedClip, file: string): Promise<void> {
  const bar = `lum='235*mod(floor(N/pow(2,floor(X/${barPx}))),2)':cb=128:cr=128`;
  const source = `nullsrc=size=${width}x${height}:rate=${rate},geq=${bar}`;
  const thinned = leaveOut === 0 ? source : `${source},select='mod(n,${leaveOut})'`;
  const run = (...asked: readonly string[]) => promisify(execFile)(bundled, ['-loglevel', 'error', ...asked]);
  const upright = turned === 'no' ? file : file.replace(/\.mp4$/, '-upright.mp4');
  await run(
    ...['-f', 'lavfi', '-i', thinned, '-frames:v', String(frames), '-vsync', 'passthrough'],
    ...['-c:v', 'libx264', '-pix_fmt', 'yuv420p', '-g', '48', '-bf', '2', '-crf', '18'],
    ...['-y', upright],
  );
  // The turn is written only when the stream is copied.
  if (turned === 'quarter') await run('-i', upright, '-c', 'copy', '-metadata:s:v:0', 'rotate=90', '-y', file);
}

/** The number that the nth frame of such a clip carries. */
export function numberOf(frame: number, { leaveOut }: CountedClip): number {
  // Where every nth number is left out, n - 1 of each n are there, beginning with 1.
  return leaveOut === 0 ? frame : Math.floor(frame / (leaveOut - 1)) * leaveOut + (frame % (leaveOut - 1)) + 1;
}

/** Finds the canvas over the video while a decoded frame is shown on it. */
const drawnOver = 'video + canvas:not([hidden])';

/** How the bars lie in the upright picture, for the page to read them, and where else than in the video that picture may be. */
export const barsOf = ({ turned }: CountedClip) => ({ bits, barPx, turned, drawnOver });
