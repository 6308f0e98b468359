import path from 'node:path';
import { expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { temporaryFolder } from '../../workbench.ts';
import { ffmpeg } from '../clips.ts';

it('reads a transport stream frame for frame, though the bundled ffprobe crashes on it', async () => {
  const file = path.join(temporaryFolder(), 'camera.ts');
  const picture = ['-f', 'lavfi', '-i', 'testsrc=size=320x240:rate=25:duration=2'];
  const sound = ['-f', 'lavfi', '-i', 'sine=duration=2', '-c:a', 'aac'];
  await ffmpeg(...picture, ...sound, '-c:v', 'libx264', '-pix_fmt', 'yuv420p', file);
  const probe = await probeClip(await findMediaTools(), file);
  expect(probe.facts).toMatchObject({ codec: 'h264', width: 320, height: 240, frames: 50, durationUs: 2_000_000 });
  expect(probe).toMatchObject({ container: 'mpegts', hasAudio: true, plays: 'proxy', meanFps: 25 });
  // MPEG-TS counts 90,000 ticks a second: 3,600 a frame.
  const [first = 0] = probe.table.ticks;
  expect(probe.table.ticks).toEqual(Array.from({ length: 50 }, (_, frame) => first + frame * 3600));
  expect(probe.table.timeBase).toEqual({ numerator: 1, denominator: 90_000 });
});
