import path from 'node:path';
import { expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { readChosenPictures, readPictures } from '../../../../../electron/backend/media/read/readPictures.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { squatFile, temporaryFolder } from '../../workbench.ts';
import { ffmpeg } from '../clips.ts';

const size = { width: 96, height: 54 };

// A clip of two seconds has one key frame, at its start, and sound that begins before its pictures.
it.each(['ts', 'mpg'])('reads the frames asked for out of a stream without an index: .%s', async (ending) => {
  const folder = temporaryFolder();
  const file = path.join(folder, `camera.${ending}`);
  const sound = ['-f', 'lavfi', '-i', 'sine=duration=2', '-c:a', 'mp2'];
  const pictures = ['-itsoffset', '0.3', '-i', squatFile];
  const coded = ending === 'ts' ? ['-c:v', 'copy'] : ['-c:v', 'mpeg2video', '-q:v', '2', '-g', '600', '-bf', '2'];
  await ffmpeg(...pictures, ...sound, '-map', '0:v', '-map', '1:a', '-frames:v', '60', ...coded, file);
  const tools = await findMediaTools();
  const { table, shown } = await probeClip(tools, file);
  const count = table.ticks.length;
  expect(count).toBeGreaterThanOrEqual(59);
  const small = `scale=${size.width}:${size.height}:flags=area`;
  const [grey, luma] = await Promise.all(
    [`${small},format=gray`, `${small}:out_range=tv,format=yuv420p,extractplanes=y`].map((filters) =>
      ffmpeg('-i', file, '-an', '-vf', filters, '-vsync', 'passthrough', '-f', 'rawvideo', '-'),
    ),
  );
  const frameOf = (all: Uint8Array | undefined, frame: number) => all?.subarray(frame * 96 * 54, (frame + 1) * 96 * 54);

  const chosen = [7, 31, 55];
  const seen: number[] = [];
  for await (const { frame, bytes } of readChosenPictures(tools, file, { table, frames: chosen, size })) {
    seen.push(frame);
    expect(farthest(bytes, frameOf(luma, frame)), `frame ${frame}`).toBeLessThanOrEqual(2);
  }
  expect(seen).toEqual(chosen);

  const options = { table, shown, planes: 'grey', firstFrame: 40, lastFrame: 42, shrinkTo: size } as const;
  for await (const { frame, bytes } of readPictures(tools, file, options)) {
    seen.push(frame);
    expect(farthest(bytes, frameOf(grey, frame)), `frame ${frame}`).toBeLessThanOrEqual(2);
    expect(farthest(bytes, frameOf(grey, frame + 10))).toBeGreaterThan(10);
  }
  expect(seen.slice(3)).toEqual([40, 41, 42]);
});

const farthest = (one: Uint8Array, other: Uint8Array = new Uint8Array()): number =>
  other.length === 0 ? 255 : other.reduce((most, grey, at) => Math.max(most, Math.abs(grey - (one[at] ?? 0))), 0);
