import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fragmentWithin, printTimeFragment } from '../../engine/time/writtenTime.ts';

// W3C Media Fragments URI 1.0 (basic), Recommendation of 2012, section 4.2.1: the temporal dimension in normal play time,
// whole seconds with an optional fraction; the end comes after the start.
const temporal = /^t=(\d+(?:\.\d+)?)(?:,(\d+(?:\.\d+)?))?$/;

it('writes what the grammar allows, with the same times to the microsecond', () => {
  const us = fc.nat({ max: 86_400_000_000 });
  fc.assert(
    fc.property(us, fc.option(fc.integer({ min: 1, max: 1e9 })), (startUs, length) => {
      const endUs = length === null ? null : startUs + length;
      const [, start, end] = temporal.exec(printTimeFragment({ startUs, endUs })) ?? [];
      expect(Math.round(Number(start) * 1e6)).toBe(startUs);
      expect(end === undefined ? null : Math.round(Number(end) * 1e6)).toBe(endUs);
    }),
  );
});

it.each([
  [10, 20, 't=10,20'],
  [0, 20, 't=0,20'],
  [10, null, 't=10'],
  [120, 121.5, 't=120,121.5'],
  [12.4, 14.1, 't=12.4,14.1'],
  [0.000001, null, 't=0.000001'],
])('%d to %d s is "%s"', (startS, endS, text) => {
  expect(printTimeFragment({ startUs: startS * 1e6, endUs: endS === null ? null : endS * 1e6 })).toBe(text);
});

it('clips an end beyond the clip, and puts a start beyond it at the end', () => {
  expect(fragmentWithin({ startUs: 1, endUs: 99 }, 50)).toEqual({ startUs: 1, endUs: 50 });
  expect(fragmentWithin({ startUs: 60, endUs: null }, 50)).toEqual({ startUs: 50, endUs: 50 });
});
