import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alignSounds, type Sound } from '../../../engine/cameras/alignSounds.ts';

const rateHz = 8000;

/** Numbers from 0 to 1 that a seed gives again (Lehmer's generator with the factor of Park and Miller, 1988, from memory). */
function dice(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** When something is heard in a room: plates, feet, breath, at no rhythm. */
const roomOf = (seed: number, lastS: number): number[] => {
  const next = dice(seed);
  const times: number[] = [];
  for (let at = 0.3; at < lastS; at += 0.25 + 1.5 * next()) times.push(at);
  return times;
};

type Phone = {
  readonly fromS: number;
  readonly lastS: number;
  readonly gain: number;
  readonly noise: number;
  readonly dull: number;
  readonly seed: number;
};

/** What a phone records of it: each sound a burst that dies away, through a microphone that is more or less dull, with its own noise. */
function record(room: readonly number[], { fromS, lastS, gain, noise, dull, seed }: Phone): Sound {
  const next = dice(seed);
  const samples = new Float32Array(Math.round(lastS * rateHz));
  for (const [place, at] of room.entries()) {
    const loud = 0.3 + 0.7 * dice(place + 7)();
    const ring = dice(place + 99);
    for (let i = 0; i < 0.15 * rateHz; i += 1) {
      const where = Math.round((at - fromS) * rateHz) + i;
      const wave = (ring() - 0.5) * loud * Math.exp(-i / (0.03 * rateHz));
      if (where >= 0 && where < samples.length) samples[where] = (samples[where] ?? 0) + gain * wave;
    }
  }
  let held = 0;
  for (let i = 0; i < samples.length; i += 1) {
    held = dull * held + (1 - dull) * (samples[i] ?? 0);
    samples[i] = held + noise * (next() - 0.5);
  }
  return { samples, rateHz };
}

const phone = (change: Partial<Phone>): Phone => ({
  fromS: 0,
  lastS: 12,
  gain: 1,
  noise: 0.004,
  dull: 0.2,
  seed: 1,
  ...change,
});

describe('two recordings of one room', () => {
  it('lie over each other to a hundredth of a second, whichever began first, however loud and dull', () => {
    fc.assert(
      fc.property(
        fc.record({
          seed: fc.integer({ min: 1, max: 100_000 }),
          fromS: fc.double({ min: 0, max: 6, noNaN: true }),
          gain: fc.double({ min: 0.1, max: 2, noNaN: true }),
          dull: fc.double({ min: 0, max: 0.8, noNaN: true }),
        }),
        ({ seed, fromS, gain, dull }) => {
          const room = roomOf(seed, 20);
          const lead = record(room, phone({ fromS: 3, seed: seed + 1 }));
          const other = record(room, phone({ fromS, gain, dull, seed: seed + 2 }));
          // What the lead hears at 0 stands at 3 - fromS in the other.
          expect(Math.abs((alignSounds(lead, other)?.offsetS ?? 99) - (3 - fromS))).toBeLessThanOrEqual(0.01);
        },
      ),
      { numRuns: 12 },
    );
  });

  it('are told from recordings of two rooms, and from silence', () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const lead = record(roomOf(seed, 20), phone({ seed }));
      expect(alignSounds(lead, record(roomOf(seed + 500, 20), phone({ seed: seed + 3 })))).toBeNull();
      expect(alignSounds(lead, { samples: new Float32Array(rateHz * 10), rateHz })).toBeNull();
    }
  });

  it('need something in common', () => {
    const room = roomOf(5, 30);
    const early = record(room, phone({ fromS: 0, lastS: 8 }));
    const late = record(room, phone({ fromS: 14, lastS: 8, seed: 2 }));
    expect(alignSounds(early, late)).toBeNull();
    expect(alignSounds(early, { samples: new Float32Array(100), rateHz })).toBeNull();
  });
});
