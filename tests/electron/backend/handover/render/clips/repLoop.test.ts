import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { afterAll, describe, expect, it } from 'vitest';
import { renderRepLoop } from '../../../../../../electron/backend/handover/render/clips/repLoop.ts';
import { pictureWords } from '../../../../../../electron/backend/handover/render/pictures/stills.ts';
import { probeClip } from '../../../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../../../../electron/backend/media/tools/mediaTools.ts';
import { distanceToPath, measuredClip, noteAt, pictureAt, truthOf } from '../../shownClip.ts';

const run = promisify(execFile);
const folder = mkdtempSync(path.join(tmpdir(), 'rackside-loop-'));
afterAll(() => rmSync(folder, { recursive: true }));

// The first rep of the squat: 0.8 s to 3.9 s.
const rep = { firstFrame: 24, lastFrame: 117, note: noteAt(80), words: pictureWords('en') };

describe('the loop of a rep', () => {
  it('plays the rep and a little around it, without sound, in a small file with the path in it', async () => {
    const tools = await findMediaTools();
    const clip = await measuredClip('squat-side');
    const file = path.join(folder, 'loop.mp4');
    await renderRepLoop(tools, clip, file, rep);
    expect(statSync(file).size).toBeLessThanOrEqual(8_000_000);
    const { facts, hasAudio, shown } = await probeClip(tools, file);
    expect(hasAudio).toBe(false);
    expect(facts.codec).toBe('h264');
    // Frames 24 to 117, and nine before and after.
    expect(Math.abs(facts.frames - (94 + 18))).toBeLessThanOrEqual(1);
    const rgb = await pictureAt(file, 70 - 15);
    const [xPx = 0, yPx = 0] = truthOf('squat-side').disc_centre_px[60] ?? [];
    expect(distanceToPath(rgb, shown, { xPx, yPx })).toBeLessThanOrEqual(2);
  });

  it('takes a smaller picture to keep to the bytes it is given', async () => {
    const tools = await findMediaTools();
    const file = path.join(folder, 'small.mp4');
    await renderRepLoop(tools, await measuredClip('squat-side'), file, { ...rep, speed: 0.5, mostBytes: 150_000 });
    expect(statSync(file).size).toBeLessThanOrEqual(150_000);
    const { stdout } = await run(tools.ffprobe.path, [
      '-v',
      'error',
      '-show_entries',
      'stream=width,height,duration',
      '-of',
      'csv=p=0',
      file,
    ]);
    const [width, height, durationS] = stdout.split(',').map(Number);
    expect(Math.max(width ?? 0, height ?? 0)).toBeLessThan(854);
    expect(Math.abs((durationS ?? 0) - 2 * (112 / 30))).toBeLessThanOrEqual(2 / 30);
  });

  it('is not made when no picture is small enough, and leaves nothing', async () => {
    const place = path.join(folder, 'none');
    const work = renderRepLoop(await findMediaTools(), await measuredClip('squat-side'), path.join(place, 'loop.mp4'), {
      ...rep,
      mostBytes: 2_000,
    });
    await expect(work).rejects.toMatchObject({ problem: { code: 'bad-request' } });
    expect(readdirSync(place)).toEqual([]);
  });
});
