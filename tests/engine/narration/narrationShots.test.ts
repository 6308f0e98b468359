import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { NarrationTrack } from '../../../engine/narration/narration.ts';
import { decodeStretches, narrationShots } from '../../../engine/narration/narrationShots.ts';

const look = { atUs: 0, near: null, drawn: [], layers: [] };

const trackOf = (frames: [number, number][], lastsUs: number): NarrationTrack => ({
  ...{ frames, lastsUs, looks: [look], shapes: [] },
});

describe('the pictures of a film', () => {
  it('stand for what was on screen at the middle of their time', () => {
    const track = trackOf(
      [
        [0, 7],
        [150_000, 8],
        [210_000, 3],
      ],
      400_000,
    );
    const shots = [...narrationShots(track, { numerator: 10, denominator: 1 }, [])];
    // Middles: 0.05, 0.15, 0.25, 0.35 s.
    expect(shots.map(({ frame }) => frame)).toEqual([7, 8, 3, 3]);
  });

  it('are off by no more than half of their time, whatever was shown', () => {
    const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 90_000 }), fc.nat(500)), { minLength: 1, maxLength: 80 });
    fc.assert(
      fc.property(steps, (taken) => {
        let atUs = 0;
        const frames = taken.map(([waits, frame], index): [number, number] => {
          atUs += index === 0 ? 0 : waits;
          return [atUs, frame];
        });
        const track = trackOf(frames, atUs + 100_000);
        [...narrationShots(track, { numerator: 30, denominator: 1 }, [])].forEach(({ frame }, shot) => {
          const middleUs = ((shot + 0.5) * 1_000_000) / 30;
          const near = frames.some(([from, shown], index) => {
            const until = frames[index + 1]?.[0] ?? Number.POSITIVE_INFINITY;
            return shown === frame && from <= middleUs + 1 && until > middleUs - 1;
          });
          expect(near).toBe(true);
        });
      }),
    );
  });
});

describe('stretches to decode', () => {
  it('read what plays on in its order, and hold what goes to and fro', () => {
    expect(decodeStretches([1, 1, 2, 3, 3, 5])).toEqual([{ decode: 'inOrder', frames: [1, 2, 3, 5] }]);
    expect(decodeStretches([5, 4, 3, 4])).toEqual([{ decode: 'atOnce', frames: [5, 4, 3, 4] }]);
    expect(decodeStretches([1, 5_000])).toEqual([
      { decode: 'inOrder', frames: [1] },
      { decode: 'inOrder', frames: [5_000] },
    ]);
  });

  it('give every change of the picture once, and never hold more than fits', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(300), { maxLength: 300 }), (shown) => {
        const stretches = decodeStretches(shown);
        expect(stretches.flatMap(({ frames }) => frames)).toEqual(shown.filter((frame, at) => frame !== shown[at - 1]));
        for (const { decode, frames } of stretches) {
          if (decode === 'atOnce') expect(new Set(frames).size).toBeLessThanOrEqual(24);
          else expect(frames).toEqual([...new Set(frames)].sort((one, other) => one - other));
        }
      }),
    );
  });
});
