import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { ffmpeg } from '../../media/clips.ts';

const bits = 7;
const barPx = 48;
const barsHeightPx = 64;
const [width, height] = [bits * barPx, 240];

/** How a clip's frames follow each other. */
export type Pace = {
  readonly name: string;
  /** As ffmpeg takes it: "30000/1001". */
  readonly rate: string;
  /** How its frames are moved from that rate. */
  readonly pts?: string;
  /** How it is written. */
  readonly options?: readonly string[];
  /** Seconds that an edit list hides at its start. */
  readonly cutS?: number;
};

/** Makes a clip of 100 frames that carry their own number as seven bars along the upper edge, white for one and black for nought. */
export async function numberedClip(folder: string, { name, rate, pts = 'PTS', options, cutS }: Pace): Promise<string> {
  const file = path.join(folder, name);
  const bar = `lum='if(lt(Y,${barsHeightPx}),235*mod(floor(N/pow(2,floor(X/${barPx}))),2),120)':cb=128:cr=128`;
  const source = `nullsrc=size=${width}x${height}:rate=${rate},format=yuv420p,geq=${bar},settb=1/90000,setpts='${pts}'`;
  const whole = cutS === undefined ? file : path.join(folder, `whole-${name}`);
  await ffmpeg(
    ...['-f', 'lavfi', '-i', source, '-frames:v', '100', '-vsync', 'passthrough'],
    ...(options ?? ['-c:v', 'libx264', '-pix_fmt', 'yuv420p', '-crf', '16']),
    ...['-video_track_timescale', '90000', whole],
  );
  if (cutS !== undefined) await ffmpeg('-ss', String(cutS), '-i', whole, '-c', 'copy', file);
  return file;
}

/** The number of each frame of a file, in the order of their times; read from its pictures. */
export async function numbersIn(file: string): Promise<readonly number[]> {
  const scale = `crop=in_w:in_h*${barsHeightPx - 16}/${height}:0:in_h*8/${height},scale=${bits}:1:flags=area,format=gray`;
  const bytes = await ffmpeg('-i', file, '-vsync', 'passthrough', '-vf', scale, '-f', 'rawvideo', '-');
  return Array.from({ length: bytes.length / bits }, (_, frame) =>
    [...bytes.subarray(frame * bits, (frame + 1) * bits)].reduce(
      (sum, grey, bit) => sum + (grey > 128 ? 2 ** bit : 0),
      0,
    ),
  );
}

/** When each frame of a file appears, in seconds, as ffprobe tells it of decoded frames. */
export async function timesIn(file: string): Promise<readonly number[]> {
  const { ffprobe } = await findMediaTools();
  const asked = ['-select_streams', 'v', '-show_entries', 'frame=best_effort_timestamp_time', '-of', 'csv=p=0', file];
  const { stdout } = await promisify(execFile)(ffprobe.path, ['-v', 'error', ...asked]);
  return stdout
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => Number.parseFloat(line));
}

/** The numbers that a player shows at some times: each that of the last frame that has appeared by then. */
export async function numbersAt(file: string, atS: readonly number[]): Promise<readonly (number | undefined)[]> {
  const [numbers, times] = await Promise.all([numbersIn(file), timesIn(file)]);
  return atS.map((each) => numbers[times.findLastIndex((time) => time <= each + 1e-6)]);
}
