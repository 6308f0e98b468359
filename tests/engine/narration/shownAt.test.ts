import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { joinPieces, type NarrationTrack, trackSchema } from '../../../engine/narration/narration.ts';
import { framesAhead, shapesOf, shownAt } from '../../../engine/narration/shownAt.ts';

const bare = { near: null, drawn: [], layers: [] };
const line = {
  shape: 'line' as const,
  points: [
    { x: 1, y: 2 },
    { x: 3, y: 4 },
  ] as const,
};

/** Frame 5 for a second, then 6, then back to 2; a line is drawn at 1.5 s. */
const track: NarrationTrack = {
  lastsUs: 3_000_000,
  frames: [
    [0, 5],
    [1_000_000, 6],
    [2_000_000, 2],
  ],
  looks: [
    { atUs: 0, ...bare },
    { atUs: 1_500_000, ...bare, drawn: [0] },
  ],
  shapes: [{ ...line, points: [...line.points] }],
};

describe('what was shown at a time', () => {
  it.each([
    [0, 5],
    [999_999, 5],
    [1_000_000, 6],
    [1_999_999, 6],
    [2_000_000, 2],
    [900_000_000, 2],
  ])('at %i µs is frame %i', (us, frame) => {
    expect(shownAt(track, us).frame).toBe(frame);
  });

  it('has what was drawn from the moment it was drawn', () => {
    expect(shapesOf(track, shownAt(track, 1_499_999).look)).toEqual([]);
    expect(shapesOf(track, shownAt(track, 1_500_000).look)).toEqual([line]);
  });

  it('agrees with looking through all events in turn, at any time', () => {
    for (let us = 0; us <= track.lastsUs; us += 12_345) {
      const before = track.frames.filter(([atUs]) => atUs <= us);
      expect(shownAt(track, us).frame).toBe(before.at(-1)?.[1]);
    }
  });

  it('names the frames to come, each once', () => {
    const toAndFro: NarrationTrack = {
      ...track,
      frames: [
        [0, 4],
        [10, 5],
        [20, 4],
        [30, 3],
      ],
    };
    expect(framesAhead(toAndFro, 12, 10)).toEqual([5, 4, 3]);
    expect(framesAhead(toAndFro, 0, 2)).toEqual([4, 5]);
  });
});

describe('a track from anywhere', () => {
  it.each([
    [
      'times that fall',
      {
        frames: [
          [5, 1],
          [4, 2],
        ],
      },
    ],
    ['a shape that is not there', { looks: [{ atUs: 0, ...bare, drawn: [1] }] }],
    ['no picture', { frames: [] }],
    ['more than fifteen minutes', { lastsUs: 900_000_001 }],
    ['half a frame', { frames: [[0, 1.5]] }],
    [
      'a nearness without end',
      { looks: [{ atUs: 0, ...bare, near: { scale: Number.POSITIVE_INFINITY, x: 0, y: 0 } }] },
    ],
    ['a field nobody knows', { more: 1 }],
  ])('with %s is refused', (_, change) => {
    expect(v.safeParse(trackSchema, { ...track, ...change }).success).toBe(false);
    expect(v.safeParse(trackSchema, track).success).toBe(true);
  });

  it('is joined of its pieces in their order', () => {
    const [first, ...others] = track.frames;
    const pieces = [
      { frames: first ? [first] : [], looks: track.looks.slice(0, 1), shapes: [] },
      { frames: others, looks: track.looks.slice(1), shapes: track.shapes },
    ];
    expect(joinPieces(pieces, 3_000_000)).toEqual(track);
    expect(joinPieces([...pieces].reverse(), 3_000_000)).toBeNull();
    expect(joinPieces([], 1)).toBeNull();
  });
});
