import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { recordMotion } from '../../electron/backend/measure/recordMotion.ts';
import { trackDisc } from '../../electron/backend/measure/trackDisc.ts';
import { probeClip } from '../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools, type MediaTools } from '../../electron/backend/media/tools/mediaTools.ts';
import { buildChanged } from '../../electron/launch/buildChanged.ts';
import { findRuntime } from '../../electron/launch/runtime.ts';
import type { App } from '../e2e/harness/app.ts';
import { type Bench as Apps, createBench } from '../e2e/harness/bench.ts';
import { openDisplay } from '../e2e/harness/display.ts';
import { finishedJob } from '../e2e/harness/jobs.ts';
import { addOneClip, footage } from '../e2e/harness/oneClip.ts';
import { openReview } from '../e2e/harness/reviewScreen.ts';
import { findClip } from '../electron/backend/media/clips.ts';
import { type Bench, type Figure, median, timed } from './bench.ts';
import { longestBlock, nth, stepTimes } from './windowTimes.ts';

const run = promisify(execFile);
const rounds = 3;

/** A clip played so many times in a row. */
async function repeated(tools: MediaTools, times: number, folder: string): Promise<string> {
  const file = path.join(folder, `repeated-${times}.mp4`);
  const loop = ['-stream_loop', String(times - 1), '-i', findClip('squat-side'), '-c', 'copy', '-an', '-y', file];
  await run(tools.ffmpeg.path, ['-v', 'error', ...loop]);
  return file;
}

type Made = { readonly seconds: number; readonly picture: string; readonly framesPerSecond: number };

/** A clip of so many seconds, in another size and rate. */
async function made(tools: MediaTools, folder: string, { seconds, picture, framesPerSecond }: Made): Promise<string> {
  const file = path.join(folder, `made-${seconds}-${picture.replace(':', 'x')}-${framesPerSecond}.mp4`);
  const source = ['-stream_loop', '3', '-i', findClip('squat-side'), '-t', String(seconds)];
  const look = [
    '-vf',
    `scale=${picture},fps=${framesPerSecond}`,
    '-c:v',
    'libx264',
    '-preset',
    'veryfast',
    '-an',
    '-y',
  ];
  await run(tools.ffmpeg.path, ['-v', 'error', ...source, ...look, file]);
  return file;
}

const wholeSeconds = 20;

/** Everything about a clip, disc and joints, as the command measures it; against the clip's own length. */
async function wholeClips(folder: string): Promise<Figure[]> {
  const tools = await findMediaTools();
  const figures: Figure[] = [];
  for (const [picture, framesPerSecond] of [
    ['1280:720', 30],
    ['1280:720', 60],
    ['1920:1080', 30],
    ['1920:1080', 60],
  ] as const) {
    const clip = await made(tools, folder, { seconds: wholeSeconds, picture, framesPerSecond });
    const { table, shown, meanFps } = await probeClip(tools, clip);
    const wanted = ['disc', 'joints'] as const;
    const order = { tools, clip, table, shown, framesPerSecond: meanFps, clicks: [], wanted };
    const machine = { threads: os.availableParallelism(), courtesy: 'nobody' } as const;
    const work = { signal: new AbortController().signal, onProgress: () => undefined };
    const ms = await timed(() => recordMotion({ ...order, ...machine }, work));
    const size = `${picture.replace(':', ' × ')} at ${framesPerSecond}`;
    figures.push({
      what: `${wholeSeconds} s of ${size}, disc and joints / its length`,
      ratio: ms / 1000 / wholeSeconds,
      goal: 1,
    });
  }
  return figures;
}

const decode = (tools: MediaTools, clip: string) =>
  run(tools.ffmpeg.path, ['-v', 'error', '-i', clip, '-an', '-vf', 'format=gray', '-f', 'rawvideo', '-y', os.devNull]);

async function follow(tools: MediaTools, clip: string, onProgress: () => void = () => undefined): Promise<void> {
  const { table, shown } = await probeClip(tools, clip);
  await trackDisc(tools, clip, { table, shown, clicks: [], onProgress });
}

/** The most memory that following a clip takes, in bytes. */
async function mostMemory(tools: MediaTools, clip: string): Promise<number> {
  let most = 0;
  await follow(tools, clip, () => {
    most = Math.max(most, process.memoryUsage.rss());
  });
  return most;
}

async function discAlone(folder: string): Promise<Figure[]> {
  const tools = await findMediaTools();
  const short = await repeated(tools, 2, folder);
  const long = await repeated(tools, 16, folder);
  const bare: number[] = [];
  const whole: number[] = [];
  const bareBrief: number[] = [];
  const brief: number[] = [];
  const sevenSeconds = await made(tools, folder, { seconds: 7, picture: '854:480', framesPerSecond: 30 });
  await follow(tools, short);
  for (let round = 0; round < rounds; round += 1) {
    bare.push(await timed(() => decode(tools, long)));
    whole.push(await timed(() => follow(tools, long)));
    bareBrief.push(await timed(() => decode(tools, sevenSeconds)));
    brief.push(await timed(() => follow(tools, sevenSeconds)));
  }
  const small = await mostMemory(tools, short);
  const large = await mostMemory(tools, long);
  return [
    {
      what: 'the disc followed in a long clip / ffmpeg decoding to grey',
      ratio: median(whole) / median(bare),
      goal: 1.5,
    },
    { what: 'the disc followed in 7 s / the same', ratio: median(brief) / median(bareBrief), goal: 2 },
    { what: 'most memory, a clip 8 times as long / the shorter', ratio: large / small, goal: 1.25 },
  ];
}

/** Adds a clip to a session that takes longer to measure than the steps beside it. */
async function addLongClip(app: App, sessionId: string, folder: string): Promise<string> {
  const long = await repeated(await findMediaTools(), 8, folder);
  const { jobIds } = await app.ask('clips.import', { sessionId, exercise: 'back-squat', view: 'side', paths: [long] });
  for (const jobId of jobIds) await finishedJob(app, jobId);
  const { clipId } = (await app.ask('jobs.list', {})).find(({ id }) => jobIds.includes(id)) ?? {};
  if (!clipId) throw new Error('The long clip was not taken in.');
  return clipId;
}

/** Stepping and typing while another clip is measured, joints included, against the same without. */
async function beside(apps: Apps, folder: string): Promise<Figure[]> {
  const app = await apps.launch(apps.newFolder('bench-measure'));
  const { sessionId, clipId } = await addOneClip(app, footage.hevc);
  await app.ask('reps.mark', { clipId, edge: 'start', frame: 10 });
  await app.ask('flags.add', { clipId, criterion: 'depth', severity: 'adjust', reps: [1], frame: 20 });
  const longId = await addLongClip(app, sessionId, folder);
  await app.page.reload();
  await openReview(app, sessionId);
  await stepTimes(app, 'ArrowRight', 10);
  const alone = await stepTimes(app, 'ArrowRight', 120);
  const blockAlone = await longestBlock(app);
  await stepTimes(app, 'ArrowLeft', 100);
  const { jobIds } = await app.ask('measures.start', { clipIds: [longId], joints: true, again: true });
  const measuring = await stepTimes(app, 'ArrowRight', 120);
  const blockMeasuring = await longestBlock(app);
  const still = (await app.ask('jobs.list', {})).some(({ id, state }) => jobIds.includes(id) && state === 'running');
  await app.close();
  if (!still) throw new Error('Measuring ended before the steps did; nothing was compared.');
  return [
    { what: 'a step while measuring, median / a step without', ratio: median(measuring) / median(alone), goal: 1.25 },
    {
      what: 'a step while measuring, 95 of 100 / the same without',
      ratio: nth(measuring, 0.95) / nth(alone, 0.95),
      goal: 1.2,
    },
    { what: 'longest block while typing and measuring, ms / 50 ms', ratio: blockMeasuring / 50, goal: 1 },
    { what: 'longest block while typing alone, ms / 50 ms', ratio: blockAlone / 50, goal: 1 },
  ];
}

/** Measuring: the disc against bare decoding, memory, whole clips against their length, and the desk while it runs. */
export const measure: Bench = {
  name: 'measure',
  about: 'following the disc, clips measured whole, and the desk while one is measured',
  run: async () => {
    const folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-bench-'));
    await buildChanged();
    const { executable } = await findRuntime();
    const display = await openDisplay();
    const apps = await createBench(executable, display.environment);
    try {
      return [...(await discAlone(folder)), ...(await wholeClips(folder)), ...(await beside(apps, folder))];
    } finally {
      await apps.clear();
      display.stop();
      await rm(folder, { recursive: true, force: true });
    }
  },
};
