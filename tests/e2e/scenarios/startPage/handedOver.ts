import { execFile } from 'node:child_process';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { path as ffmpeg } from '@ffmpeg-installer/ffmpeg';
import * as v from 'valibot';
import { rootFolder } from '../../../../electron/launch/folders.ts';
import { run } from '../../../electron/cli/runCommand.ts';
import { footage } from '../../harness/oneClip.ts';
import { type NoteOfClip, notesOfFolder, sheetTimes } from './writtenNotes.ts';

/** A handover of one clip, as another program reads it. */
export type HandedOver = {
  readonly folder: string;
  readonly address: string;
  /** A page without a word and without a policy, beside the folder. */
  readonly emptyAddress: string;
  /** The remarks with their times in the clip in the folder, as its annotations tell them. */
  readonly notes: readonly NoteOfClip[];
  /** Times of the remarks in the footage, as its sheet tells them, by the remark's id. */
  readonly footageTimes: ReadonlyMap<string, number>;
  readonly frameS: number;
};

const reviewSchema = v.looseObject({
  entries: v.array(
    v.looseObject({
      clips: v.array(v.looseObject({ path: v.string(), reps: v.array(v.unknown()) })),
      flags: v.array(v.looseObject({ at: v.object({ seconds: v.number() }) })),
      ticks: v.array(v.unknown()),
    }),
  ),
});

/** Where the demo's squat has stood up from its first rep and waits for the next, in seconds. */
const firstRepEndsS = 4.6;

/** The demo's portrait clip without the clip by itself: the page plays the one with the notes in its picture. */
export function pressWithNotes(folder: string): Promise<HandedOver> {
  const options = ['--no-originals'];
  return handOver(folder, { place: 2, clip: footage.portrait, untilS: Number.POSITIVE_INFINITY, options });
}

/** The first rep of the demo's squat as it was filmed, in German: the page draws path and angles over it. */
export async function squatAsFilmed(folder: string): Promise<HandedOver> {
  await mkdir(folder, { recursive: true });
  const clip = path.join(folder, 'squat.mp4');
  const cut = ['-t', String(firstRepEndsS), '-c:v', 'libx264', '-crf', '16', '-pix_fmt', 'yuv420p'];
  await promisify(execFile)(ffmpeg, ['-loglevel', 'error', '-i', footage.squat, ...cut, '-y', clip]);
  const options = ['--originals', '--no-clips', '--joints', '--language', 'de'];
  return handOver(folder, { place: 0, clip, untilS: firstRepEndsS, options });
}

type Asked = {
  readonly place: number;
  readonly clip: string;
  readonly untilS: number;
  readonly options: readonly string[];
};

async function handOver(folder: string, { place, clip, untilS, options }: Asked): Promise<HandedOver> {
  await mkdir(folder, { recursive: true });
  const demo = path.join(rootFolder, 'seeds', 'demo', 'session.json');
  const review = v.parse(reviewSchema, JSON.parse(await readFile(demo, 'utf8')));
  const whole = untilS === Number.POSITIVE_INFINITY;
  const entries = review.entries.slice(place, place + 1).map((entry) => ({
    ...entry,
    clips: entry.clips.map((one) => ({ ...one, path: clip, reps: whole ? one.reps : one.reps.slice(0, 1) })),
    flags: entry.flags.filter(({ at }) => at.seconds < untilS),
    ticks: whole ? entry.ticks : [],
  }));
  const file = path.join(folder, 'review.json');
  await writeFile(file, JSON.stringify({ ...review, entries }));
  const { code, stdout, stderr } = await run([
    'handover',
    file,
    '--footage-outside',
    '--out',
    path.join(folder, 'out'),
    ...options,
  ]);
  if (code !== 0) throw new Error(`handover ended with ${code}: ${stderr}`);
  const handed = stdout.trim();
  const empty = path.join(folder, 'empty.html');
  await writeFile(empty, '<!doctype html><html lang="en"><title>Empty</title><body></body></html>');
  return {
    folder: handed,
    address: pathToFileURL(path.join(handed, 'index.html')).href,
    emptyAddress: pathToFileURL(empty).href,
    notes: await notesOfFolder(handed),
    footageTimes: await sheetTimes(handed),
    frameS: 1 / 30,
  };
}
