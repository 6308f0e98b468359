import { describe, expect, it } from 'vitest';
import { asFilmed } from '../../../engine/framing/framing.ts';
import { lookKey } from '../../../engine/framing/lookKey.ts';
import {
  footageFrame,
  toldFrame,
  toldFrameCount,
  toldUs,
  toldUsOfFrame,
  toldUsOfSeconds,
} from '../../../engine/framing/toldTime.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';

/** Twenty-five frames a second, the first at 0.2 s; frame 4 stays for three frames' time. */
const ticks = [5, 6, 7, 8, 9, 12, 13, 14, 15, 16];
const table: FrameTable = { timeBase: { numerator: 1, denominator: 25 }, ticks, endTicks: 17 };
/** Frames 2 to 7. */
const clip = { section: { from: { frame: 2, ticks: 7 }, to: { frame: 7, ticks: 14 } } };

describe('moments of a trimmed clip', () => {
  it('are told from its first frame on, in time and by number', () => {
    // Frame 5 appears at 12/25 s, the section at 7/25 s: 5/25 s = 0.2 s.
    expect(toldUsOfFrame(clip, table, 5)).toBe(200_000);
    expect(toldFrame(clip, 5)).toBe(3);
    expect(toldFrameCount(clip, table)).toBe(6);
    expect(toldUs(clip, 480_000, table.timeBase)).toBe(200_000);
  });

  it('are told of measured seconds, which count from the footage’s first frame', () => {
    // 0.28 s after 0.2 s is 0.48 s of media time, which is frame 5.
    expect(toldUsOfSeconds(clip, table, 0.28)).toBe(200_000);
    expect(toldUsOfSeconds({}, table, 0.28)).toBe(480_000);
  });

  it('are its start where they lie before it', () => {
    expect([toldFrame(clip, 1), toldUsOfFrame(clip, table, 1)]).toEqual([0, 0]);
  });

  it('come back from what is told', () => {
    for (const frame of [2, 3, 7]) expect(footageFrame(clip, toldFrame(clip, frame))).toBe(frame);
  });
});

it('moments of a clip that shows all of its footage are the footage’s own', () => {
  expect([toldFrame({}, 5), footageFrame({}, 5), toldFrameCount({}, table)]).toEqual([5, 5, 10]);
  expect(toldUsOfFrame({}, table, 5)).toBe(480_000);
});

describe('pictures of one clip', () => {
  it('are told apart by each thing that changes them, in names that fit files and addresses', () => {
    const crop = { leftPx: 10, topPx: 20, widthPx: 320, heightPx: 240 };
    const looks = [
      {},
      { framing: { ...asFilmed, turnDeg: 90 as const } },
      { framing: { ...asFilmed, mirrored: true } },
      { framing: { ...asFilmed, crop } },
      { framing: { ...asFilmed, crop: { ...crop, topPx: 22 } } },
      { framing: { ...asFilmed, brightness: 1.5 } },
      clip,
      { ...clip, framing: { ...asFilmed, turnDeg: 270 as const, mirrored: true, crop, brightness: 0.5 } },
    ].map(lookKey);
    expect(new Set(looks).size).toBe(looks.length);
    for (const look of looks) expect(look).toMatch(/^[\w.-]*$/);
    expect(lookKey({ framing: asFilmed, section: null })).toBe('');
  });
});
