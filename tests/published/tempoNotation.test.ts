import { expect, it } from 'vitest';
import { parseTempo } from '../../engine/time/tempo.ts';

// Tempos of Wilk et al. 2018 (J Hum Kinet, "movement tempo"): eccentric, pause, concentric, pause, in seconds, and
// their sums.
it.each([
  ['2-0-2-0', [2, 0, 2, 0], 4],
  ['5-0-3-0', [5, 0, 3, 0], 8],
  ['6-0-4-0', [6, 0, 4, 0], 10],
  ['2.5-0-1-1', [2.5, 0, 1, 1], 4.5],
])('%s takes %o s, %d s a rep', (text, phases, seconds) => {
  const tempo = parseTempo(text);
  const read = [tempo?.eccentricS, tempo?.pauseStretchedS, tempo?.concentricS, tempo?.pauseShortenedS];
  expect(read).toEqual(phases);
  expect(phases.reduce((sum, phase) => sum + phase, 0)).toBe(seconds);
});

it('X means as fast as control allows: no time', () => {
  expect(parseTempo('3-1-X-0')).toEqual({ eccentricS: 3, pauseStretchedS: 1, concentricS: null, pauseShortenedS: 0 });
});

it.each(['3-1-x-0', '3-1-1', '3/1/1/0', '-1-1-1-0', '3-1-X-0 ', '100-0-0-0', 'X-1-1-0', ''])('refuses "%s"', (text) => {
  expect(parseTempo(text)).toBeNull();
});
