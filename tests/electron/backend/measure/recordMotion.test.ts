import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { type RecordingOrder, recordMotion } from '../../../../electron/backend/measure/recordMotion.ts';
import { probeClip } from '../../../../electron/backend/media/probe/probeClip.ts';
import { findMediaTools, type MediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
import type { RecordedParts } from '../../../../electron/backend/store/recordings.ts';
import { ffmpeg } from '../media/clips.ts';
import { squatFile, temporaryFolder } from '../workbench.ts';

let tools: MediaTools;
let order: RecordingOrder;

beforeAll(async () => {
  tools = await findMediaTools();
  const { table, shown, meanFps } = await probeClip(tools, squatFile);
  order = {
    tools,
    clip: squatFile,
    table,
    shown,
    framesPerSecond: meanFps,
    clicks: [],
    wanted: ['disc'],
    threads: 1,
    courtesy: 'nobody',
  };
});

const patient = { signal: new AbortController().signal, onProgress: () => undefined };

describe('footage looked at in a thread of its own', () => {
  it('tells how far it is, ever further, and leaves the asking thread free', async () => {
    const shares: number[] = [];
    let turns = 0;
    const turning = setInterval(() => {
      turns += 1;
    }, 1);
    const recorded = await recordMotion(order, { ...patient, onProgress: (share) => void shares.push(share) });
    clearInterval(turning);
    expect(recorded.disc?.found?.frames).toHaveLength(order.table.ticks.length);
    expect(recorded.joints).toBeUndefined();
    expect(shares.length).toBeGreaterThan(5);
    expect(shares).toEqual(shares.toSorted((one, other) => one - other));
    expect(shares.at(-1)).toBeLessThanOrEqual(1);
    expect(turns).toBeGreaterThan(10);
  });

  it('looks for the joints beside the disc, and alone, in as many frames', async () => {
    const clip = path.join(temporaryFolder(), 'short.mp4');
    await ffmpeg('-i', squatFile, '-frames:v', '12', '-c:v', 'libx264', '-an', clip);
    const { table, shown, meanFps } = await probeClip(tools, clip);
    const short = { ...order, clip, table, shown, framesPerSecond: meanFps };
    const both = await recordMotion({ ...short, wanted: ['disc', 'joints'] }, patient);
    const alone = await recordMotion({ ...short, wanted: ['joints'] }, patient);
    expect(both.disc).toBeDefined();
    expect(both.joints?.found?.frames).toHaveLength(12);
    expect(both.joints?.found?.frames.filter((body) => body !== null).length).toBeGreaterThan(6);
    expect(alone).toEqual({ joints: both.joints });
  });

  it('looks for the joints without the native library where it has to, finds the same, and says so', async () => {
    const clip = path.join(temporaryFolder(), 'short.mp4');
    await ffmpeg('-i', squatFile, '-frames:v', '6', '-c:v', 'libx264', '-an', clip);
    const { table, shown, meanFps } = await probeClip(tools, clip);
    const short = { ...order, clip, table, shown, framesPerSecond: meanFps, wanted: ['joints'] as const };
    const told = vi.fn();
    const native = await recordMotion(short, { ...patient, onSlower: told });
    expect(told).not.toHaveBeenCalled();
    vi.stubEnv('RACKSIDE_JOINTS', 'wasm');
    const wasm = await recordMotion(short, { ...patient, onSlower: told }).finally(() => vi.unstubAllEnvs());
    expect(told).toHaveBeenCalledOnce();
    const placesOf = ({ joints }: RecordedParts) => joints?.found?.frames.flat() ?? [];
    expect(placesOf(wasm)).toHaveLength(6 * 17);
    const standingPx = 420;
    // Rounding moves the next crop by a hair, which moves a joint that is hidden by more than one that is seen.
    placesOf(wasm).forEach((joint, i) => {
      const other = placesOf(native)[i];
      if (!joint || !other || joint.confidence < 0.5) return;
      expect(Math.hypot(joint.xPx - other.xPx, joint.yPx - other.yPx)).toBeLessThan(0.01 * standingPx);
    });
  });

  it('looks for nothing that is not wanted', async () => {
    expect(await recordMotion({ ...order, wanted: [] }, patient)).toEqual({});
  });

  it('stops when told to, before and while it works', async () => {
    const before = AbortSignal.abort();
    await expect(recordMotion(order, { ...patient, signal: before })).rejects.toMatchObject({
      problem: { code: 'cancelled' },
    });
    const stopping = new AbortController();
    const work = { signal: stopping.signal, onProgress: () => stopping.abort() };
    await expect(recordMotion(order, work)).rejects.toMatchObject({ problem: { code: 'cancelled' } });
  });

  it('gives the reason in one sentence when the footage can’t be decoded', async () => {
    const clip = path.join(temporaryFolder(), 'text.mp4');
    writeFileSync(clip, 'This is a text, not a clip.');
    await expect(recordMotion({ ...order, clip }, patient)).rejects.toMatchObject({
      message: expect.stringContaining('“text.mp4”'),
      problem: { code: 'bad-media' },
    });
  });
});
