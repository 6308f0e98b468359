import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import ffmpeg from '@ffmpeg-installer/ffmpeg';
import type { App } from '../../harness/app.ts';
import { goToFrame } from '../../harness/reviewScreen.ts';

/** Small grey pictures are enough to tell neighbours apart, and quick to carry. */
const size = { width: 96, height: 96 };

/** Shows each of the frames and compares the picture with what an independent decoder gives for it and for its neighbours. */
export async function checkPictures(app: App, clip: string, frames: readonly number[]): Promise<void> {
  const around = frames.flatMap((frame) => [frame - 1, frame, frame + 1]);
  const decoded = await decodedFrames(clip, around);
  for (const frame of frames) {
    await goToFrame(app, frame);
    const expected = [frame - 1, frame, frame + 1].map((number) => decoded.get(number) ?? Buffer.alloc(0));
    const [before, same, after] = await differencesFromScreen(app, expected);
    assert.ok(same !== undefined && before !== undefined && after !== undefined);
    assert.ok(same < before && same < after, `frame ${frame}: ${before} ${same} ${after}`);
  }
}

/** Frames of a clip as an independent decoder gives them: grey, upright, 96 by 96. */
async function decodedFrames(clip: string, frames: readonly number[]): Promise<ReadonlyMap<number, Buffer>> {
  const inOrder = [...new Set(frames)].sort((a, b) => a - b);
  const wanted = inOrder.map((frame) => `eq(n\\,${frame})`).join('+');
  const { stdout } = await promisify(execFile)(
    ffmpeg.path,
    [
      ...['-v', 'error', '-i', clip],
      ...['-vf', `select=${wanted},scale=${size.width}:${size.height}:flags=area,format=gray`],
      ...['-vsync', '0', '-f', 'rawvideo', '-'],
    ],
    { encoding: 'buffer', maxBuffer: 16 * 1024 * 1024 },
  );
  const bytes = size.width * size.height;
  assert.equal(stdout.length, bytes * inOrder.length);
  return new Map(inOrder.map((frame, index) => [frame, stdout.subarray(index * bytes, (index + 1) * bytes)]));
}

/** Mean absolute grey difference between the picture on the stage and each of the given ones. */
function differencesFromScreen(app: App, expected: readonly Buffer[]): Promise<number[]> {
  return app.page.evaluate(
    ({ pictures, width, height }) => {
      const still = document.querySelector<HTMLCanvasElement>('.stage canvas:not([hidden])');
      const source = still ?? document.querySelector('video');
      const canvas = new OffscreenCanvas(width, height);
      const context = canvas.getContext('2d');
      if (source === null || context === null) throw new Error('there is no picture');
      context.imageSmoothingQuality = 'high';
      context.drawImage(source, 0, 0, width, height);
      const { data } = context.getImageData(0, 0, width, height);
      const grey = Array.from({ length: width * height }, (_, i) => {
        const [red = 0, green = 0, blue = 0] = data.subarray(i * 4, i * 4 + 3);
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
      });
      const mean = grey.reduce((sum, value) => sum + value, 0) / grey.length;
      return pictures.map((picture) => {
        // Brightness levels differ between decoders (full or limited range); the shape is what counts.
        const other = picture.reduce((sum, value) => sum + value, 0) / picture.length;
        return (
          picture.reduce((sum, value, i) => sum + Math.abs(value - other - ((grey[i] ?? 0) - mean)), 0) / picture.length
        );
      });
    },
    { pictures: expected.map((picture) => [...picture]), ...size },
  );
}
