import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { ClipToShow, PictureNote } from '../../../../electron/backend/handover/render/picture.ts';
import { probeClip } from '../../../../electron/backend/media/probe/probeClip.ts';
import type { PictureSize } from '../../../../electron/backend/media/probe/streams.ts';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import { repOf } from '../../../engine/handover/folder.ts';
import { ffmpeg, findClip } from '../media/clips.ts';

const footage = path.resolve(import.meta.dirname, '../../../footage');

type Truth = {
  readonly pts: readonly number[];
  readonly disc_centre_px: readonly (readonly [number, number])[];
  readonly reps: readonly {
    readonly phases_s: Readonly<Record<'eccentric' | 'bottom_pause' | 'concentric' | 'top_pause', [number, number]>>;
  }[];
};

/** What the figure of a clip did, as it was written down when the clip was made. */
export const truthOf = (name: string): Truth =>
  JSON.parse(readFileSync(path.join(footage, `${name}.truth.json`), 'utf8'));

/** A measurement whose path is the one the figure's disc took. */
export function trueMeasurement({ pts, disc_centre_px: centres, reps }: Truth): SetMeasurement {
  return {
    ...{
      calibration: null,
      follows: 'disc',
      followsBecause: 'discMovesWithLifter',
      facing: null,
      nearSide: null,
      view: null,
      warnings: [],
    },
    track: { frames: pts.length, lost: 0, meanConfidence: 1 },
    reps: reps.map(({ phases_s: phases }, place) => repOf(place + 1, phases.eccentric[0], phases.concentric[1])),
    offered: [],
    set: { speedLossPct: null, romSpreadM: null, eccentricSpreadS: null },
    curves: {
      timesS: pts,
      positionPx: centres.map(([xPx, yPx]) => ({ xPx, yPx })),
      heightM: pts.map(() => null),
      forwardM: pts.map(() => null),
      speedMps: pts.map(() => null),
      heightPlusMinusM: null,
    },
  };
}

/** A file as a clip with nothing over it. */
export async function plainClip(file: string): Promise<ClipToShow> {
  const { table, shown, hasAudio } = await probeClip(await findMediaTools(), file);
  return {
    ...{ file, table, shown, hasSound: hasAudio },
    ...{ measurement: null, camera: null, body: null, drawings: [], covers: [] },
  };
}

/** A clip of the repository with the path its disc took. */
export async function measuredClip(name: string): Promise<ClipToShow> {
  return { ...(await plainClip(findClip(name))), measurement: trueMeasurement(truthOf(name)) };
}

export const noteAt = (frame: number, rest: Partial<PictureNote> = {}): PictureNote => ({
  ...{ frame, severity: 'adjust', heading: 'adjust · Depth · Rep 1', words: '' },
  ...rest,
});

/** One picture of a file as RGB. */
export async function rgbOf(file: string, filter = 'null'): Promise<Buffer> {
  return ffmpeg('-i', file, '-vf', filter, '-frames:v', '1', '-f', 'rawvideo', '-pix_fmt', 'rgb24', '-');
}

/** The picture of a clip at a place in its order. */
export const pictureAt = (file: string, place: number): Promise<Buffer> => rgbOf(file, `select=eq(n\\,${place})`);

type Place = { readonly xPx: number; readonly yPx: number };

/** How far from a place, in pixels, the nearest pixel of the path's light blue is; infinite beyond eight pixels. */
export function distanceToPath(rgb: Buffer, { width, height }: PictureSize, { xPx, yPx }: Place): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let row = Math.max(0, Math.floor(yPx) - 8); row < Math.min(height, yPx + 8); row += 1) {
    for (let column = Math.max(0, Math.floor(xPx) - 8); column < Math.min(width, xPx + 8); column += 1) {
      const at = 3 * (row * width + column);
      const [red = 0, green = 0, blue = 0] = rgb.subarray(at, at + 3);
      if (blue - red < 35 || green < 120) continue;
      nearest = Math.min(nearest, Math.hypot(column + 0.5 - xPx, row + 0.5 - yPx));
    }
  }
  return nearest;
}

/** Largest and smallest value of a channel mean within a box. */
export function rangeWithin(
  rgb: Buffer,
  width: number,
  box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number },
): number {
  let [least, most] = [255, 0];
  for (let row = box.top; row < box.bottom; row += 1) {
    for (let column = box.left; column < box.right; column += 1) {
      const at = 3 * (row * width + column);
      const grey = ((rgb[at] ?? 0) + (rgb[at + 1] ?? 0) + (rgb[at + 2] ?? 0)) / 3;
      [least, most] = [Math.min(least, grey), Math.max(most, grey)];
    }
  }
  return most - least;
}
