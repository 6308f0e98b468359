import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { joinPieces, trackPieceSchema } from '../../../../engine/narration/narration.ts';
import { shapesOf, shownAt } from '../../../../engine/narration/shownAt.ts';
import type { Drawn } from '../../../../engine/review/drawings/drawing.ts';
import { type OnScreen, trackWriter } from '../../../../renderer/review/model/trackWriter.ts';

const line: Drawn = {
  shape: 'line',
  points: [
    { x: 1, y: 2 },
    { x: 30, y: 40 },
  ],
};
const screen = (frame: number, change: Partial<OnScreen> = {}): OnScreen => ({
  ...{ frame, near: null, drawn: [], layers: ['path'] },
  ...change,
});

describe('what is written down while somebody speaks', () => {
  it('tells again, piece by piece, what was on screen at any time', () => {
    const writer = trackWriter();
    const steps = [
      { atUs: 0, shown: screen(4) },
      { atUs: 40_000, shown: screen(5) },
      { atUs: 50_000, shown: screen(5, { drawn: [line] }) },
      { atUs: 90_000, shown: screen(3, { drawn: [line], near: { scale: 2, x: 10, y: 20 } }) },
      { atUs: 95_000, shown: screen(3) },
    ];
    const pieces = steps.map(({ atUs, shown }) => {
      writer.note(atUs, shown);
      return writer.take();
    });
    for (const piece of pieces) expect(v.is(trackPieceSchema, piece)).toBe(true);
    const track = joinPieces(pieces, 100_000);
    if (track === null) throw new Error('The pieces contradict each other.');
    expect(track.shapes).toEqual([line]);
    for (const { atUs, shown } of steps) {
      const then = shownAt(track, atUs);
      expect({ ...shown, frame: then.frame, near: then.look.near, drawn: shapesOf(track, then.look) }).toEqual(shown);
    }
  });

  it('notes nothing twice, and lets no time fall', () => {
    const writer = trackWriter();
    writer.note(10, screen(1));
    writer.note(20, screen(1));
    writer.note(15.4, screen(2));
    writer.note(3, screen(7));
    expect(writer.take()).toMatchObject({
      frames: [
        [10, 1],
        [15, 2],
        [15, 7],
      ],
    });
    expect(writer.take()).toEqual({ frames: [], looks: [], shapes: [] });
  });
});
