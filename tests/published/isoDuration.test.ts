import fc from 'fast-check';
import { expect, it } from 'vitest';
import { formatDurationS } from '../../engine/time/writtenTime.ts';

// ISO 8601 durations by the ABNF of RFC 3339, appendix A, as far as whole seconds need it.
const time = /^PT(?:(\d+)H(?:(\d+)M(?:(\d+)S)?)?|(\d+)M(?:(\d+)S)?|(\d+)S)$/;

function secondsOf(text: string): number {
  const [, hours = 0, minutes = 0, seconds = 0, minutesAlone = 0, theirSeconds = 0, secondsAlone = 0] =
    time.exec(text)?.map((part) => Number(part ?? 0)) ?? [];
  return 3600 * hours + 60 * (minutes + minutesAlone) + seconds + theirSeconds + secondsAlone;
}

it.each([
  [0, 'PT0S'],
  [45, 'PT45S'],
  [90, 'PT1M30S'],
  [3600, 'PT1H'],
  [3630, 'PT1H0M30S'],
  [3902, 'PT1H5M2S'],
  [129_600, 'PT36H'],
])('%d s is %s', (seconds, text) => {
  expect(formatDurationS(seconds)).toBe(text);
});

it('writes nothing that the grammar refuses, and as many seconds as were given', () => {
  fc.assert(
    fc.property(fc.nat({ max: 10_000_000 }), (seconds) => {
      const text = formatDurationS(seconds);
      expect(text).toMatch(time);
      expect(secondsOf(text)).toBe(seconds);
    }),
  );
});

it.each([-1, 0.5, Number.NaN])('refuses to write %d', (seconds) => {
  expect(() => formatDurationS(seconds)).toThrow(RangeError);
});
