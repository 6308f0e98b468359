import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { makeProxy } from '../../../../../electron/backend/media/write/proxy.ts';
import { ffmpeg, findClip } from '../clips.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-edit-'));
afterAll(() => rmSync(folder, { recursive: true }));

it('counts only the frames that an edit list shows, and a copy has exactly those', async () => {
  const trimmed = path.join(folder, 'trimmed.mp4');
  // Cut without decoding at 2.5 s: the file keeps earlier frames for decoding and an edit list hides them.
  await ffmpeg('-ss', '2.5', '-i', findClip('squat-side'), '-c', 'copy', '-movflags', 'faststart', trimmed);
  const tools = await findMediaTools();
  const { table } = await probeClip(tools, trimmed);

  // 423 frames at 30 per second, of which the first 75 (2.5 s) are hidden.
  expect(table.ticks).toHaveLength(423 - 75);
  expect(table.ticks[0]).toBe(0);

  const decoded = await ffmpeg(
    '-i',
    trimmed,
    '-vsync',
    'passthrough',
    '-vf',
    'scale=2:2,format=gray',
    '-f',
    'rawvideo',
    '-',
  );
  expect(decoded.length / 4).toBe(table.ticks.length);
  const copy = await makeProxy(tools, trimmed, path.join(folder, 'copy.mp4'), { table });
  expect(copy.ticks).toEqual(table.ticks);
});
