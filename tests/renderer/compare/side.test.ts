import { describe, expect, it } from 'vitest';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { newestOnly } from '../../../renderer/compare/newestOnly.ts';
import { panPane, wholePane, zoomPane } from '../../../renderer/compare/paneZoom.ts';
import { frameInRep, frameInStep, type Side } from '../../../renderer/compare/side.ts';
import { spreadOver } from '../../../renderer/compare/spreadOver.ts';
import { squatClip } from '../harness/reviewBench.ts';

/** Two hundred frames at 10 frames a second. */
const table: FrameTable = {
  timeBase: { numerator: 1, denominator: 10 },
  ticks: Array.from({ length: 200 }, (_, i) => i),
  endTicks: 200,
};
const at = (frame: number) => ({ frame, ticks: frame });
/** Rep 1: 20 frames down, 10 up. Rep 2: 10 down, 20 up. */
const reps = [
  { index: 1, start: at(0), stretchedEnd: at(20), end: at(30) },
  { index: 2, start: at(40), stretchedEnd: at(50), end: at(70) },
];
const side = (rep: number, realTimeFactor = 1): Side => ({
  ...{ sessionId: 's', date: '2026-03-04', exercise: 'back-squat', units: 'kg', rep, flags: [], measurement: null },
  clip: { ...squatClip({ reps }), realTimeFactor },
  picture: { width: 640, height: 360 },
  tables: { table, playback: table },
});

describe('another rep', () => {
  it.each([
    [10, 45, 'half way down'],
    [20, 50, 'the stretched end'],
    [25, 60, 'half way up'],
  ])('is shown at the phase of the one before: frame %d goes to %d, %s', (frame, expected) => {
    expect(frameInRep(frame, side(1), 2)).toBe(expected);
    expect(frameInStep(frame, side(1), side(2), 'phase')).toBe(expected);
  });
});

describe('in step by time', () => {
  it('is as long into the rep, and rests at its end', () => {
    expect(frameInStep(12, side(1), side(2), 'time')).toBe(52);
    expect(frameInStep(30, side(1), side(2), 'time')).toBe(70);
    expect(frameInStep(65, side(2), side(1), 'time')).toBe(25);
    expect(frameInStep(70, side(2), side(1), 'time')).toBe(30);
  });

  it('counts lifting time: a clip at eight times slower moves eight frames for one', () => {
    expect(frameInStep(2, side(1), side(2, 8), 'time')).toBe(56);
    expect(frameInStep(56, side(2, 8), side(1), 'time')).toBe(2);
  });
});

describe('loads', () => {
  it('take the newest answer alone, whichever comes last', async () => {
    const taken: string[] = [];
    const loads = newestOnly((one: string) => taken.push(one));
    let answerFirst = (_: string): void => {};
    loads.ask(
      new Promise((resolve) => {
        answerFirst = resolve;
      }),
    );
    const second = Promise.resolve('second');
    loads.ask(second);
    await second;
    answerFirst('first');
    await Promise.resolve();
    await Promise.resolve();
    expect(taken).toEqual(['second']);
  });

  it('take nothing once the screen has gone on to another clip', async () => {
    const taken: string[] = [];
    const loads = newestOnly((one: string) => taken.push(one));
    const late = Promise.resolve('late');
    loads.ask(late);
    loads.stop();
    await late;
    await Promise.resolve();
    expect(taken).toEqual([]);
  });
});

describe('the zoom of a pane', () => {
  it('keeps what lies under the pointer there, and the pane covered', () => {
    const zoom = zoomPane(wholePane, 4, { x: 0.25, y: 1 });
    expect(zoom).toEqual({ scale: 4, x: -0.75, y: -3 });
    expect(panPane(zoom, { x: 9, y: 9 })).toEqual({ scale: 4, x: 0, y: 0 });
    expect(zoomPane(zoom, 0.01)).toEqual(wholePane);
  });
});

describe('clips over the months', () => {
  const clips = Array.from({ length: 20 }, (_, at) => ({ clipId: `c${at}` }));
  it('are spread from the first to the last, with the two that are compared', () => {
    const row = spreadOver(clips, 8, ['c3', 'c4']).map(({ clipId }) => clipId);
    expect(row).toHaveLength(8);
    expect(row).toEqual(expect.arrayContaining(['c0', 'c3', 'c4', 'c19']));
    expect(row).toEqual([...row].sort((a, b) => Number(a.slice(1)) - Number(b.slice(1))));
  });

  it('are all there where there are few', () => {
    expect(spreadOver(clips.slice(0, 5), 8, [])).toEqual(clips.slice(0, 5));
  });
});
