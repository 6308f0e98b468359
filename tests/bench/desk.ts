import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import { path as ffmpeg } from '@ffmpeg-installer/ffmpeg';
import { clipAddress } from '../../electron/contract/addresses.ts';
import { buildChanged } from '../../electron/launch/buildChanged.ts';
import { rootFolder } from '../../electron/launch/folders.ts';
import { findRuntime } from '../../electron/launch/runtime.ts';
import type { App } from '../e2e/harness/app.ts';
import { type Bench as Apps, createBench } from '../e2e/harness/bench.ts';
import { openDisplay } from '../e2e/harness/display.ts';
import { addOneClip, footage } from '../e2e/harness/oneClip.ts';
import { processTree } from '../e2e/harness/processes.ts';
import { openReview } from '../e2e/harness/reviewScreen.ts';
import { type Bench, type Figure, median } from './bench.ts';
import { growth } from './growth.ts';
import { longestBlock, nth, stepTimes } from './windowTimes.ts';

/** Milliseconds a frame takes when all are decoded and drawn one after the other, a screen refresh each at the least. */
async function sequentialTime(app: App, clipId: string): Promise<number> {
  const code = await readFile(path.join(rootFolder, 'node_modules/mediabunny/dist/bundles/mediabunny.min.cjs'), 'utf8');
  await app.page.evaluate(
    `(() => { const module = { exports: {} }; const exports = module.exports; ${code}; window.decoder = Object.keys(module.exports).length > 0 ? module.exports : Mediabunny; })()`,
  );
  return app.page.evaluate(async (address) => {
    const decoder = Reflect.get(window, 'decoder');
    const input = new decoder.Input({ source: new decoder.UrlSource(address), formats: decoder.ALL_FORMATS });
    const track = await input.getPrimaryVideoTrack();
    const sink = new decoder.VideoSampleSink(track);
    const canvas = document.createElement('canvas');
    document.body.append(canvas);
    const context = canvas.getContext('2d');
    const start = performance.now();
    let frames = 0;
    for await (const sample of sink.samples()) {
      canvas.width = sample.displayWidth;
      canvas.height = sample.displayHeight;
      sample.draw(context, 0, 0);
      sample.close();
      await new Promise((resolve) => requestAnimationFrame(resolve));
      frames += 1;
      if (frames === 200) break;
    }
    canvas.remove();
    input.dispose();
    return (performance.now() - start) / frames;
  }, clipAddress(clipId));
}

async function stepping(apps: Apps): Promise<Figure[]> {
  const app = await apps.launch(apps.newFolder('bench-stepping'));
  // A clip that this browser can't play: it steps through its proxy.
  const { sessionId, clipId } = await addOneClip(app, footage.hevc);
  await app.page.reload();
  await openReview(app, sessionId);
  await stepTimes(app, 'ArrowRight', 10);
  const forward = await stepTimes(app, 'ArrowRight', 120);
  const back = await stepTimes(app, 'ArrowLeft', 120);
  const one = await sequentialTime(app, clipId);
  await app.close();
  return [
    { what: 'a step on, median / a frame decoded and shown in sequence', ratio: median(forward) / one, goal: 2 },
    { what: 'a step on, 95 of 100 / the same', ratio: nth(forward, 0.95) / one, goal: 2 },
    { what: 'a step back, median / the same', ratio: median(back) / one, goal: 4 },
    { what: 'a step back, 95 of 100 / the same', ratio: nth(back, 0.95) / one, goal: 4 },
  ];
}

const longS = 600;

/** A clip of ten minutes at 60 frames a second, small and plain. */
async function makeLongClip(file: string): Promise<void> {
  await promisify(execFile)(ffmpeg, [
    ...['-loglevel', 'error', '-f', 'lavfi', '-i', `testsrc=size=192x108:rate=60:duration=${longS}`],
    ...['-c:v', 'libx264', '-preset', 'ultrafast', '-pix_fmt', 'yuv420p', '-g', '60', '-y', file],
  ]);
}

const memoryOf = async (app: App): Promise<number> => {
  const sizes = await Promise.all(
    (await processTree(app.processId)).map(async (id) => {
      const status = await readFile(`/proc/${id}/status`, 'utf8').catch(() => '');
      return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0);
    }),
  );
  return sizes.reduce((sum, size) => sum + size, 0);
};

async function large(apps: Apps): Promise<Figure[]> {
  const folder = apps.newFolder('bench-large');
  const app = await apps.launch(folder);
  const file = path.join(folder, 'long.mp4');
  await makeLongClip(file);
  const { sessionId, clipId } = await addOneClip(app, file);
  const criteria = ['depth', 'eccentricTempo', 'pauses', 'barPath', 'headPosition', 'spinePosition'];
  for (let rep = 0; rep < 60; rep += 1) await app.ask('reps.mark', { clipId, edge: 'start', frame: rep * 600 });
  for (let flag = 0; flag < 500; flag += 1) {
    await app.ask('flags.add', {
      clipId,
      criterion: criteria[flag % criteria.length] ?? 'depth',
      severity: 'adjust',
      reps: [(flag % 60) + 1],
      frame: flag * 71,
    });
  }
  await app.page.reload();
  await openReview(app, sessionId);
  const block = await longestBlock(app);
  const drift = await driftFrames(app);
  const box = await app.page.getByRole('slider', { name: 'Position in the clip' }).boundingBox();
  const seek = async (times: number): Promise<void> => {
    for (let time = 0; time < times; time += 1) {
      await app.page.mouse.click((box?.x ?? 0) + ((time * 97) % (box?.width ?? 1)), (box?.y ?? 0) + 8);
    }
  };
  await seek(200);
  const before = await memoryOf(app);
  await seek(1000);
  const after = await memoryOf(app);
  await app.close();
  return [
    { what: 'longest block while typing a note, ms / 50 ms', ratio: block / 50, goal: 1 },
    { what: 'drift over 60 s at 0.25 ×, in frames', ratio: drift, goal: 1 },
    { what: 'memory after 1,000 more seeks / before', ratio: after / before, goal: 1.1 },
  ];
}

/** Frames by which playing at a quarter of the speed is off after a minute, by the browser's own times of its frames. */
const driftFrames = (app: App): Promise<number> =>
  app.page.evaluate(async () => {
    const video = document.querySelector('video');
    if (video === null) throw new Error('There is no picture.');
    const at = (): Promise<{ now: number; media: number }> =>
      new Promise((resolve) =>
        video.requestVideoFrameCallback((_now, { expectedDisplayTime, mediaTime }) =>
          resolve({ now: expectedDisplayTime, media: mediaTime }),
        ),
      );
    video.playbackRate = 0.25;
    await video.play();
    for (let warm = 0; warm < 30; warm += 1) await at();
    const from = await at();
    await new Promise((resolve) => setTimeout(resolve, 60_000));
    const to = await at();
    video.pause();
    const due = ((to.now - from.now) / 1000) * 0.25;
    return Math.abs(to.media - from.media - due) * 60;
  });

/** The desk: what a large library costs; and in its window, how quick a step is, and what a large session does to typing and memory. */
export const desk: Bench = {
  name: 'desk',
  about:
    'a large library against a small one, stepping, and a clip of 10 minutes at 60 frames a second with 60 reps and 500 flags',
  run: async () => {
    const grown = await growth();
    await buildChanged();
    const { executable } = await findRuntime();
    const display = await openDisplay();
    const apps = await createBench(executable, display.environment);
    try {
      return [...grown, ...(await stepping(apps)), ...(await large(apps))];
    } finally {
      await apps.clear();
      display.stop();
    }
  },
};
