import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  follow,
  frameAtShare,
  inWindow,
  panWindow,
  shareAt,
  shareOfFrame,
  wholeClip,
  zoomWindow,
} from '../../../../renderer/review/model/stripWindow.ts';
import { table } from '../../player/fakeVideo.ts';

const place = fc.double({ min: 0, max: 1, noNaN: true });

it('twice as large in the middle shows the middle half', () => {
  expect(zoomWindow(wholeClip, 0.5, 2)).toEqual({ from: 0.25, to: 0.75 });
});

it('stays inside the clip whatever is done, and gives places back as it took them', () => {
  const move = fc.tuple(
    place,
    fc.double({ min: 0.3, max: 4, noNaN: true }),
    fc.double({ min: -2, max: 2, noNaN: true }),
  );
  fc.assert(
    fc.property(fc.array(move, { maxLength: 20 }), place, (moves, at) => {
      const window = moves.reduce((now, [p, factor, by]) => panWindow(zoomWindow(now, p, factor), by), wholeClip);
      expect(window.from).toBeGreaterThanOrEqual(-1e-9);
      expect(window.to).toBeLessThanOrEqual(1 + 1e-9);
      expect(window.to - window.from).toBeGreaterThanOrEqual(0.01 - 1e-9);
      expect(inWindow(window, shareAt(window, at))).toBeCloseTo(at, 9);
    }),
  );
});

it('goes with the playhead only when it leaves', () => {
  const window = { from: 0.2, to: 0.4 };
  expect(follow(window, 0.3)).toBe(window);
  expect(inWindow(follow(window, 0.5), 0.5)).toBeCloseTo(0.1, 9);
  expect(inWindow(follow(window, 0.1), 0.1)).toBeLessThanOrEqual(0.9);
  expect(follow(window, 1).to).toBeLessThanOrEqual(1);
});

it('lays frames out by their times, from the first to the end of the last', () => {
  // Times 0, 0.03, 0.06, 0.12, 0.14, 0.20 of 0.24 s.
  const shares = [0, 0.125, 0.25, 0.5, 0.14 / 0.24, 0.2 / 0.24];
  for (const [frame, share] of shares.entries()) expect(shareOfFrame(table, frame)).toBeCloseTo(share, 6);
});

it('finds the frame under a place, and the ends beyond them', () => {
  expect([-0.3, 0, 0.3, 0.5, 0.95, 1.4].map((share) => frameAtShare(table, share))).toEqual([0, 0, 2, 3, 5, 5]);
});
