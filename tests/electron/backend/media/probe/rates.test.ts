import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { buildFrameTable } from '../../../../../electron/backend/media/probe/frameTimes.ts';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { realTimeFactorOf } from '../../../../../electron/backend/media/probe/streams.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { hasConstantRate, meanFrameRate } from '../../../../../engine/time/frameTable.ts';
import { ffmpeg, findClip } from '../clips.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-rates-'));
afterAll(() => rmSync(folder, { recursive: true }));

const milliseconds = { numerator: 1, denominator: 1000 };
const packet = { durationTicks: null, endByte: null, discarded: false, damaged: false };
const tableOf = (times: readonly number[]) => ({
  timeBase: milliseconds,
  ticks: [...times],
  endTicks: (times.at(-1) ?? 0) + 33,
});

describe('the rate of a clip', () => {
  it('is constant when 30 per second is rounded to milliseconds', () => {
    const table = tableOf(Array.from({ length: 301 }, (_, index) => Math.round((index * 1000) / 30)));
    expect(hasConstantRate(table)).toBe(true);
    expect(meanFrameRate(table)).toBeCloseTo(30, 9);
  });

  it('is variable when one frame was dropped', () => {
    expect(hasConstantRate(tableOf([0, 33, 67, 133, 167]))).toBe(false);
  });
});

describe('the frame table', () => {
  it('is sorted, keeps equal times once, and ends after the last duration', () => {
    const packets = [0, 80, 40, 40, 120].map((pts) => ({ ...packet, pts, durationTicks: 30 }));
    expect(buildFrameTable(packets, milliseconds)).toEqual({
      timeBase: milliseconds,
      ticks: [0, 40, 80, 120],
      endTicks: 150,
    });
  });

  it('ends after the median spacing where no duration is stated', () => {
    const packets = [0, 10, 20, 30, 130].map((pts) => ({ ...packet, pts }));
    expect(buildFrameTable(packets, milliseconds)?.endTicks).toBe(140);
  });

  it('ends where the stream does, when the last frame states no duration of its own', () => {
    const packets = [0, 10, 20, 30, 130].map((pts) => ({ ...packet, pts }));
    expect(buildFrameTable(packets, milliseconds, 150)?.endTicks).toBe(150);
  });

  it.each([100, 130, 900])('is not misled by the end of a trimmed stream, %s', (streamEnd) => {
    const packets = [0, 10, 20, 30, 130].map((pts) => ({ ...packet, pts }));
    expect(buildFrameTable(packets, milliseconds, streamEnd)?.endTicks).toBe(140);
  });

  it('is refused when a frame has no time', () => {
    expect(
      buildFrameTable(
        [
          { ...packet, pts: 0 },
          { ...packet, pts: null },
        ],
        milliseconds,
      ),
    ).toBeNull();
  });
});

describe('slow motion', () => {
  it.each([
    [240, 30, 8],
    [239.76, 29.97, 8],
    [240, 29.3, 8],
    [120, 30, 4],
    [30, 29.97, 1],
    [240, 239.9, 1],
    [60, 25, 2.4],
    [1, 30, 1 / 30],
  ])('captured at %d and played at %d is slowed by %d', (captured, played, factor) => {
    expect(realTimeFactorOf(captured, played)).toBeCloseTo(factor, 9);
  });

  it("is read from the phone's tag", async () => {
    const file = path.join(folder, 'slow.mp4');
    const tag = ['-movflags', 'use_metadata_tags', '-metadata', 'com.android.capture.fps=240.000000'];
    await ffmpeg('-i', findClip('squat-side'), '-c', 'copy', ...tag, file);
    const probe = await probeClip(await findMediaTools(), file);
    expect([probe.captureFps, probe.realTimeFactor]).toEqual([240, 8]);
  });

  it('is not assumed where the file says nothing', async () => {
    const probe = await probeClip(await findMediaTools(), findClip('squat-side'));
    expect([probe.captureFps, probe.realTimeFactor]).toEqual([null, 1]);
  });
});
