import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fragmentWithin, parseTimeFragment, printTimeFragment } from '../../engine/time/mediaFragment.ts';

// W3C Media Fragments URI 1.0 (basic), Recommendation of 2012, section 4.2.1, and its published test cases for the
// temporal dimension.
it.each([
  ['#t=10,20', 10, 20],
  ['#t=,20', 0, 20],
  ['#t=10', 10, null],
  ['#t=npt:10,20', 10, 20],
  ['#t=npt:,121.5', 0, 121.5],
  ['#t=0:02:00,121.5', 120, 121.5],
  ['#t=npt:120,0:02:01.5', 120, 121.5],
  ['#t=02:00,02:01', 120, 121],
  ['#t=3,7', 3, 7],
  ['#t=3.', 3, null],
  ['http://example.com/clip.mp4#t=12.4,14.1', 12.4, 14.1],
  ['#xywh=0,0,10,10&t=1,2', 1, 2],
  ['#t=1,2&t=3,4', 3, 4],
  ['#t=3,4&t=7,3', 3, 4],
  ['#%74=3,7', 3, 7],
  ['#t=%6ept:3', 3, null],
  ['#t=3%2C7', 3, 7],
] as const)('%s', (text, startS, endS) => {
  expect(parseTimeFragment(text)).toEqual({ startUs: startS * 1e6, endUs: endS === null ? null : endS * 1e6 });
});

it.each([
  '#t=',
  '#t=,',
  '#t=3,',
  '#t=3,3',
  '#t=7,3',
  '#t=a,b',
  '#t=3,7,9',
  '#t=-1,3',
  '#t=1:60,2:00',
  '#t=%E0%A4%A',
  '#T=3,7',
  '#track=x',
  '',
])('%s names no stretch', (text) => {
  expect(parseTimeFragment(text)).toBeNull();
});

it('clips an end beyond the clip, and puts a start beyond it at the end', () => {
  expect(fragmentWithin({ startUs: 1, endUs: 99 }, 50)).toEqual({ startUs: 1, endUs: 50 });
  expect(fragmentWithin({ startUs: 60, endUs: null }, 50)).toEqual({ startUs: 50, endUs: 50 });
});

it('reads back what it writes, to the microsecond', () => {
  const us = fc.nat({ max: 86_400_000_000 });
  fc.assert(
    fc.property(us, fc.option(fc.integer({ min: 1, max: 1e9 })), (startUs, length) => {
      const fragment = { startUs, endUs: length === null ? null : startUs + length };
      expect(parseTimeFragment(`#${printTimeFragment(fragment)}`)).toEqual(fragment);
    }),
  );
});

it('writes plain decimals', () => {
  expect(printTimeFragment({ startUs: 12_400_000, endUs: 14_100_000 })).toBe('t=12.4,14.1');
  expect(printTimeFragment({ startUs: 1, endUs: null })).toBe('t=0.000001');
});
