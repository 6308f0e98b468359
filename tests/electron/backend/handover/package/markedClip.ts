import { readdirSync } from 'node:fs';
import path from 'node:path';
import { type Body, jointNames } from '../../../../../engine/recording/recording.ts';
import { ffmpeg } from '../../media/clips.ts';

export const frameCount = 50;
export const size = { width: 200, height: 120 };
const halfPx = 8;

/** Where the middle of the mark is at a frame: to the right for half of the clip, then back. */
export const markAt = (frame: number) => ({ x: 30 + 4 * Math.min(frame, frameCount - frame), y: 40 });

/** A box around the mark with six pixels of room on every side. */
export const boxAround = (frame: number) => {
  const { x, y } = markAt(frame);
  const side = 2 * (halfPx + 6);
  return { leftPx: x - side / 2, topPx: y - side / 2, widthPx: side, heightPx: side };
};

/** Makes a clip of two seconds, grey and uneven all over, with a magenta mark on it that must be found nowhere else. */
export async function markedClip(folder: string, name: string): Promise<string> {
  const file = path.join(folder, name);
  const mark = `lt(max(abs(X-30-4*min(N\\,${frameCount}-N))\\,abs(Y-40))\\,${halfPx})`;
  const planes = `lum='if(${mark}\\,100\\,120+50*sin(X/4)*cos(Y/3))':cb='if(lt(max(abs(2*X-30-4*min(N\\,${frameCount}-N))\\,abs(2*Y-40))\\,${halfPx})\\,200\\,128)':cr='if(lt(max(abs(2*X-30-4*min(N\\,${frameCount}-N))\\,abs(2*Y-40))\\,${halfPx})\\,220\\,128)'`;
  await ffmpeg(
    ...['-f', 'lavfi', '-i', `nullsrc=size=${size.width}x${size.height}:rate=25,format=yuv420p,geq=${planes}`],
    ...['-frames:v', String(frameCount), '-c:v', 'libx264', '-qp', '8', '-pix_fmt', 'yuv420p', file],
  );
  return file;
}

/** A lifter whose head is the mark, with shoulders and hips forty pixels apart. */
export const markedBody = (frame: number): Body => {
  const { x, y } = markAt(frame);
  return jointNames.map((joint) => {
    if (/Shoulder/.test(joint)) return { xPx: x, yPx: 60, confidence: 0.9 };
    if (/Hip/.test(joint)) return { xPx: x, yPx: 100, confidence: 0.9 };
    if (/nose|Eye|Ear/.test(joint)) return { xPx: x, yPx: y, confidence: 0.9 };
    return { xPx: 0, yPx: 0, confidence: 0 };
  });
};

/** Every picture of a clip or still as RGB, one after the other. */
export async function picturesOf(file: string): Promise<readonly Buffer[]> {
  const bytes = await ffmpeg('-i', file, '-vsync', 'passthrough', '-f', 'rawvideo', '-pix_fmt', 'rgb24', '-');
  const each = 3 * size.width * size.height;
  return Array.from({ length: bytes.length / each }, (_, place) => bytes.subarray(place * each, (place + 1) * each));
}

/** How many pixels of a picture are of the mark's colour. */
export function marked(rgb: Buffer): number {
  let count = 0;
  for (let at = 0; at < rgb.length; at += 3) {
    const [red = 0, green = 0, blue = 0] = [rgb[at], rgb[at + 1], rgb[at + 2]];
    if (red > 150 && blue > 150 && green < 90) count += 1;
  }
  return count;
}

/** Pictures and clips within a folder. */
export const lookable = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(?:mp4|jpg|png|webp|gif)$/.test(name))
    .sort();
