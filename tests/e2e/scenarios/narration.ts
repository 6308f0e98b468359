import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { mkdir, readdir } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import { path as bundled } from '@ffmpeg-installer/ffmpeg';
import { shownAt } from '../../../engine/narration/shownAt.ts';
import { checkerSource, checkScreen } from '../harness/accessible.ts';
import type { App } from '../harness/app.ts';
import type { Bench } from '../harness/bench.ts';
import { barsOf, type CountedClip, makeCountedClip } from '../harness/countedClip.ts';
import { finishedJob } from '../harness/jobs.ts';
import { addOneClip } from '../harness/oneClip.ts';
import type { Report } from '../harness/report.ts';
import { openReview, picture, shown } from '../harness/reviewScreen.ts';
import type { Scenario } from '../harness/scenario.ts';
import { until } from '../harness/until.ts';
import { type Seen, seenBySound, strangers, watchedIn, watchPicture } from './narration/watchPicture.ts';

const clip: CountedClip = { name: 'counted', rate: '30', frames: 330, leaveOut: 0, turned: 'no' };

/** A coach speaks over a clip while playing, stepping, slowing, drawing and zooming; it is heard, filmed, interrupted, deleted. */
export const narration: Scenario = { name: 'narration', run: (bench, report) => narrateFor(bench, report, 1) };

/** The same for a whole minute. */
export const narratedMinute: Scenario = {
  name: 'narratedMinute',
  run: (bench, report) => narrateFor(bench, report, 24),
};

const run = promisify(execFile);

async function narrateFor(bench: Bench, report: Report, rounds: number): Promise<void> {
  const { check } = report;
  const folder = bench.newFolder('narration');
  const made = `${folder}-clips`;
  await mkdir(made, { recursive: true });
  const file = path.join(made, 'counted.mp4');
  const voice = path.join(made, 'voice.wav');
  await makeCountedClip(clip, file);
  await run(bundled, ['-v', 'error', '-f', 'lavfi', '-i', 'sine=frequency=440:duration=10', '-ar', '48000', voice]);
  const app = await bench.launch(folder, 'onDemand', voice);
  const { sessionId, clipId } = await addOneClip(app, file);
  await app.page.reload();
  await openReview(app, sessionId);
  const { keyboard } = app.page;

  await check('the microphone is refused before a recording, and where the voice stays is said first', async () => {
    assert.deepEqual(await wishes(app), { sound: 'refused', picture: 'refused', both: 'refused' });
    await keyboard.press('F4');
    await app.page.getByText('stays in the library on this computer').waitFor();
  });
  await checkScreen(app, report, await checkerSource(), 'the narration bar');
  await bench.picture(app, 'narration-before');

  await watchPicture(app, barsOf(clip));
  await check('it records while the picture is played, stepped, slowed and drawn on', async () => {
    await keyboard.press('Shift+F4');
    await phase(app, 'recording');
    assert.deepEqual(await wishes(app), { sound: 'granted', picture: 'refused', both: 'refused' });
    for (let round = 0; round < rounds; round += 1) await speak(app);
    await bench.picture(app, 'narration-recording');
    // Paused, the picture may move as it likes.
    await keyboard.press('Shift+F4');
    await phase(app, 'paused');
    await keyboard.press('Home');
    await picture(app);
    await keyboard.press('Shift+F4');
    await phase(app, 'recording');
    for (let step = 0; step < 8; step += 1) await keyboard.press('Shift+ArrowRight');
    await picture(app);
    await zoomIn(app);
    await keyboard.press('F7');
    await phase(app, 'idle');
    assert.deepEqual(await wishes(app), { sound: 'refused', picture: 'refused', both: 'refused' });
  });

  const kept = await app.ask('narrations.get', { clipId });
  assert.ok(kept?.track != null, 'nothing was kept');
  const { track, lastsUs } = kept;
  const seen = await watchedIn(app);
  const recorded = seenBySound(seen);

  await check(`the data tell what was shown, ${(lastsUs / 1e6).toFixed(1)} s of it`, async () => {
    const told = recorded.map(({ sinceMs, atMs }): Seen => {
      return { sinceMs, atMs, number: shownAt(track, Math.max(0, atMs) * 1000).frame };
    });
    assert.ok(told.length > 30, `${told.length} looks`);
    assert.deepEqual(strangers(told, recorded), []);
    assert.ok(track.shapes.length > 0 && track.looks.some(({ near }) => near !== null));
  });

  await check('listening shows at each time of the sound what was shown then', async () => {
    await keyboard.press('Shift+F7');
    await phase(app, 'listening');
    await app.page.getByTestId('narrated-shapes').waitFor({ state: 'attached' });
    await bench.picture(app, 'narration-listening');
    await until('the end of the narration', async () => (await phaseNow(app)) === 'idle', 30_000 + lastsUs / 500);
    const { heard } = await watchedIn(app);
    const whole = heard.filter(({ atMs }) => atMs > 0);
    assert.ok(whole.length > lastsUs / 100_000, `${whole.length} looks`);
    assert.deepEqual(strangers(whole, recorded), []);
    // By the data: what the track says of any time between the two refreshes, a frame's time around them.
    const byData = whole.flatMap(({ sinceMs, atMs, number }) => {
      const from = Math.max(0, sinceMs - 34);
      const times = Array.from({ length: Math.ceil((atMs + 34 - from) / 10) + 1 }, (_, at) => from + 10 * at);
      const near = times.some((ms) => Math.abs(shownAt(track, ms * 1000).frame - number) <= 1);
      return near ? [] : [`${atMs.toFixed(0)} ms: ${number}`];
    });
    assert.deepEqual(byData, []);
    await picture(app);
  });

  await check('the film shows at each time the frame that was shown then, read off its pictures', async () => {
    const film = path.join(made, 'narrated.mp4');
    await app.choose({ save: film });
    await app.page.getByRole('button', { name: 'Save as video' }).click();
    const job = await until('the film', async () => {
      const jobs = await app.ask('jobs.list', {});
      return jobs.find(({ kind }) => kind === 'narration') ?? null;
    });
    await finishedJob(app, job.id);
    const nearFromUs = track.looks.find(({ near }) => near !== null)?.atUs ?? lastsUs;
    const numbers = await numbersIn(film);
    assert.ok(Math.abs(numbers.length - (lastsUs * 30) / 1e6) <= 1, `${numbers.length} pictures`);
    const wrong = numbers.flatMap((number, at) => {
      const us = ((at + 0.5) * 1e6) / 30;
      return us > nearFromUs - 50_000 || number === shownAt(track, us).frame ? [] : [`picture ${at}: ${number}`];
    });
    assert.deepEqual(wrong, []);
  });

  await check('deleting is asked, and removes the sound', async () => {
    await app.page.getByRole('button', { name: 'Delete', exact: true }).click();
    await bench.picture(app, 'narration-deleting');
    await app.page.getByRole('button', { name: 'Delete for good' }).click();
    await app.page.getByRole('button', { name: 'Record' }).waitFor();
    assert.deepEqual(await readdir(path.join(folder, 'library', 'sounds')), []);
  });

  await check('a crash loses a second or two, and what is left can be kept', async () => {
    await keyboard.press('Shift+F4');
    await phase(app, 'recording');
    await until('some seconds', async () => /0:0[4-9]/.test(await timeNow(app)));
    await app.kill();
    const again = await bench.launch(folder);
    await openReview(again, sessionId);
    await again.page.keyboard.press('F4');
    await again.page.getByRole('button', { name: 'Keep what was recorded' }).click();
    await phase(again, 'idle');
    const left = await until('the kept narration', async () => {
      const found = await again.ask('narrations.get', { clipId });
      return found?.state === 'kept' ? found : null;
    });
    assert.ok(left.lastsUs > 1_500_000, `${left.lastsUs} µs`);
    await bench.picture(again, 'narration-kept');
    await again.close();
  });
}

/** What a coach does while speaking, for some seconds. */
async function speak(app: App): Promise<void> {
  const { keyboard } = app.page;
  await keyboard.press('Home');
  await picture(app);
  await keyboard.press('Space');
  await until('playing', async () => (await shown(app)).frame > 45);
  await keyboard.press('Space');
  await picture(app);
  for (let step = 0; step < 12; step += 1) await keyboard.press('Shift+ArrowLeft');
  await picture(app);
  await keyboard.press('PageDown');
  await picture(app);
  const { frame } = await shown(app);
  const clipIdOf = await app.page.evaluate(() => document.querySelector('video')?.src.split('/').at(-1) ?? '');
  await app.ask('drawings.add', {
    clipId: clipIdOf,
    drawn: {
      shape: 'line',
      points: [
        { x: 40 + (frame % 9), y: 60 },
        { x: 300, y: 180 },
      ],
    },
    frame,
  });
  await keyboard.press('Shift+ArrowRight');
  await picture(app);
  // Backwards, as a coach looks for the moment again.
  for (let step = 0; step < 5; step += 1) await keyboard.press('PageUp');
  await picture(app);
}

async function zoomIn(app: App): Promise<void> {
  const box = await app.page.getByTestId('stage').boundingBox();
  assert.ok(box !== null);
  await app.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await app.page.mouse.wheel(0, -300);
  await app.page.locator('.stage[data-zoomed="true"]').waitFor();
}

const phaseNow = (app: App): Promise<string | null> =>
  app.page.getByTestId('narration-time').getAttribute('data-phase');
const timeNow = async (app: App): Promise<string> => (await app.page.getByTestId('narration-time').textContent()) ?? '';

async function phase(app: App, wanted: string): Promise<void> {
  await until(`the narration to be ${wanted}`, async () => (await phaseNow(app)) === wanted);
}

type Wish = 'granted' | 'refused';

/** What the page is granted when it asks for sound, pictures, or both. */
function wishes(app: App): Promise<{ readonly sound: Wish; readonly picture: Wish; readonly both: Wish }> {
  return app.page.evaluate(async () => {
    const ask = async (wish: MediaStreamConstraints): Promise<Wish> => {
      try {
        const stream = await navigator.mediaDevices.getUserMedia(wish);
        for (const track of stream.getTracks()) track.stop();
        return 'granted';
      } catch {
        return 'refused';
      }
    };
    return {
      sound: await ask({ audio: true }),
      picture: await ask({ video: true }),
      both: await ask({ audio: true, video: true }),
    };
  });
}

/** The number that each picture of a file carries, read off it. */
async function numbersIn(file: string): Promise<readonly number[]> {
  const bits = 12;
  const bars = `crop=in_w:4:0:in_h/2,scale=${bits}:1:flags=area,format=gray`;
  const { stdout } = await run(
    bundled,
    ['-v', 'error', '-i', file, '-vsync', 'passthrough', '-vf', bars, '-f', 'rawvideo', '-'],
    { encoding: 'buffer', maxBuffer: 1 << 24 },
  );
  return Array.from({ length: stdout.length / bits }, (_, at) =>
    [...stdout.subarray(at * bits, (at + 1) * bits)].reduce((sum, grey, bit) => sum + (grey > 128 ? 2 ** bit : 0), 0),
  );
}
