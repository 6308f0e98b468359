import fc from 'fast-check';
import { expect, it } from 'vitest';
import { formatDurationS, isDuration, parseDurationS } from '../../engine/time/duration.ts';

// ISO 8601 durations by the ABNF of RFC 3339, appendix A.
it.each(['PT45S', 'PT1M30S', 'PT1H', 'PT1H5M2S', 'PT36H', 'P3D', 'P1W', 'P1Y2M3DT4H'])('%s is a duration', (text) => {
  expect(isDuration(text)).toBe(true);
});

it.each(['P', 'PT', 'PT1H30S', 'PT0.5S', 'P1Y2D', 'P1W2D', 'T5S', '', 'PT5', '-PT5S', 'P3DT'])(
  '%s is no duration',
  (text) => {
    expect(isDuration(text)).toBe(false);
    expect(parseDurationS(text)).toBeNull();
  },
);

it.each([
  ['PT45S', 45],
  ['PT1M30S', 90],
  ['PT1H5M2S', 3902],
  ['PT36H', 129_600],
  ['P3D', 259_200],
  ['P1W', 604_800],
  ['P1DT1S', 86_401],
])('%s lasts %d s', (text, seconds) => {
  expect(parseDurationS(text)).toBe(seconds);
});

it.each(['P1Y', 'P2M', 'P1Y2M3DT4H'])('%s has no fixed length', (text) => {
  expect(parseDurationS(text)).toBeNull();
});

it.each([
  [0, 'PT0S'],
  [45, 'PT45S'],
  [90, 'PT1M30S'],
  [3600, 'PT1H'],
  [3630, 'PT1H0M30S'],
  [3902, 'PT1H5M2S'],
])('%d s is %s', (seconds, text) => {
  expect(formatDurationS(seconds)).toBe(text);
});

it('writes nothing that the grammar refuses, and reads it back', () => {
  fc.assert(
    fc.property(fc.nat({ max: 10_000_000 }), (seconds) => {
      const text = formatDurationS(seconds);
      expect(isDuration(text)).toBe(true);
      expect(parseDurationS(text)).toBe(seconds);
    }),
  );
});

it.each([-1, 0.5, Number.NaN])('refuses to write %d', (seconds) => {
  expect(() => formatDurationS(seconds)).toThrow(RangeError);
});
