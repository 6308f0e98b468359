import { expect, it } from 'vitest';
import { parseTempo, printTempo, repSeconds, timeUnderTensionS } from '../../engine/time/tempo.ts';

const tempoOf = (text: string) => {
  const tempo = parseTempo(text);
  if (tempo === null) throw new Error(`"${text}" is no tempo`);
  return tempo;
};

// Tempos of Wilk et al. 2018 (J Hum Kinet, "movement tempo"): eccentric, pause, concentric, pause, in seconds, and
// their sums.
it.each([
  ['2-0-2-0', 4],
  ['5-0-3-0', 8],
  ['6-0-4-0', 10],
])('%s takes %d s a rep', (text, seconds) => {
  expect(repSeconds(tempoOf(text))).toBe(seconds);
});

it('3-1-1-0 for 8 reps is 40 s under tension', () => {
  expect(timeUnderTensionS(tempoOf('3-1-1-0'), 8)).toBe(40);
});

it('X means as fast as control allows: no time, unless one is assumed', () => {
  expect(tempoOf('3-1-X-0').concentricS).toBeNull();
  expect(repSeconds(tempoOf('3-1-X-0'))).toBeNull();
  expect(repSeconds(tempoOf('3-1-X-0'), 1)).toBe(5);
});

it.each(['3-1-X-0', '2.5-0-1-1', '10-0-4-0', '0-0-0-0'])('writes %s as it reads it', (text) => {
  expect(printTempo(tempoOf(text))).toBe(text);
});

it.each(['3-1-x-0', '3-1-1', '3/1/1/0', '-1-1-1-0', '3-1-X-0 ', '100-0-0-0', 'X-1-1-0', ''])('refuses "%s"', (text) => {
  expect(parseTempo(text)).toBeNull();
});
