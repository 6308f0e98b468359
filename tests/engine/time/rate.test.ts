import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type FrameTable, hasConstantRate, meanFrameRate } from '../../../engine/time/frameTable.ts';
import { mediaToLiftingUs } from '../../../engine/time/moment.ts';
import { timecodeRateFor, timecodeRateOf } from '../../../engine/time/writtenTime.ts';

type Truth = { pts: number[]; video: { vfr: boolean; time_base: string } };

const truths = [
  'hinge-hevc',
  'hinge-side',
  'press-portrait',
  'split-squat-turned',
  'squat-low-light',
  'squat-side',
  'squat-variable-rate',
].map((name): [string, Truth] => [
  name,
  JSON.parse(readFileSync(new URL(`../../footage/${name}.truth.json`, import.meta.url), 'utf8')),
]);

it.each(truths)('%s: constant or not, as its truth says', (_name, { pts, video }) => {
  const [numerator = 1, denominator = 1] = video.time_base.split('/').map(Number);
  const ticks = pts.map((seconds) => Math.round((seconds * denominator) / numerator));
  expect(hasConstantRate({ timeBase: { numerator, denominator }, ticks, endTicks: (ticks.at(-1) ?? 0) + 1 })).toBe(
    !video.vfr,
  );
});

const evenly = (count: number, step: number, denominator: number): FrameTable => ({
  timeBase: { numerator: 1, denominator },
  ticks: Array.from({ length: count }, (_, i) => Math.round(i * step)),
  endTicks: Math.round(count * step),
});

it('calls 29.97 in milliseconds constant, though the gaps are 33 and 34', () => {
  const table = evenly(300, 1001 / 30, 1000);
  expect(hasConstantRate(table)).toBe(true);
  expect(meanFrameRate(table)).toBeCloseTo(29.97, 2);
});

it('sees one frame that comes late', () => {
  const table = evenly(300, 512, 15_360);
  const ticks = table.ticks.map((tick, i) => (i === 150 ? tick + 100 : tick));
  expect(hasConstantRate({ ...table, ticks })).toBe(false);
});

it('means 25 frames a second when 50 frames fill two', () => {
  expect(meanFrameRate(evenly(50, 40, 1000))).toBe(25);
});

it('corrects slow motion: 8 s of film at 240 stored as 30 is one second of lifting', () => {
  expect(mediaToLiftingUs(8_000_000, 8)).toBe(1_000_000);
});

it('labels 29.97 and 59.94 with drop counting, 30 and 25 without, and an odd rate not at all', () => {
  expect(timecodeRateFor(30_000 / 1001)).toEqual({ counted: 30, numbers: 'drop' });
  expect(timecodeRateFor(59.94)).toEqual({ counted: 60, numbers: 'drop' });
  expect(timecodeRateFor(30)).toEqual({ counted: 30, numbers: 'all' });
  expect(timecodeRateFor(25)).toEqual({ counted: 25, numbers: 'all' });
  expect(timecodeRateFor(27.2)).toBeNull();
});

it('labels the frames of a clip at a constant rate, whatever its time base, and of no other', () => {
  expect(timecodeRateOf(evenly(300, 1001 / 30, 1000))).toEqual({ counted: 30, numbers: 'drop' });
  expect(timecodeRateOf(evenly(300, 512, 15_360))).toEqual({ counted: 30, numbers: 'all' });
  const table = evenly(300, 512, 15_360);
  expect(timecodeRateOf({ ...table, ticks: table.ticks.map((tick, i) => (i === 150 ? tick + 100 : tick)) })).toBeNull();
});
