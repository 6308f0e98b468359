import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import ffprobe from '@ffprobe-installer/ffprobe';
import * as v from 'valibot';

export type FileFrames = {
  /** Start of each frame in the order of showing, in seconds. */
  readonly startsS: readonly number[];
  /** Numbers of the frames that need no other. */
  readonly keyframes: readonly number[];
};

const answerSchema = v.object({ packets: v.array(v.object({ pts_time: v.string(), flags: v.string() })) });

/** What an independent reader tells of a file's frames. */
export async function framesOf(file: string): Promise<FileFrames> {
  const { stdout } = await promisify(execFile)(ffprobe.path, [
    ...['-v', 'error', '-select_streams', 'v:0', '-show_entries', 'packet=pts_time,flags', '-of', 'json', file],
  ]);
  const { packets } = v.parse(answerSchema, JSON.parse(stdout));
  const inOrder = packets
    .map(({ pts_time, flags }) => ({ startS: Number(pts_time), key: flags.includes('K') }))
    .sort((a, b) => a.startS - b.startS);
  return {
    startsS: inOrder.map(({ startS }) => startS),
    keyframes: inOrder.flatMap(({ key }, frame) => (key ? [frame] : [])),
  };
}

/** Frames all over a clip, near and far apart, the same at every run. */
export function scatteredFrames(count: number, howMany: number): readonly number[] {
  const frames: number[] = [];
  // A linear congruential generator with the constants of Numerical Recipes (from memory).
  for (let state = 1; frames.length < howMany; ) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    frames.push(Math.floor((state / 2 ** 32) * count));
  }
  return frames;
}
