import { expect, it } from 'vitest';
import { frameAtShare, shareOfFrame } from '../../../../renderer/review/model/stripWindow.ts';
import { table } from '../../player/fakeVideo.ts';

it('lays frames out by their times, from the first to the end of the last', () => {
  // Times 0, 0.03, 0.06, 0.12, 0.14, 0.20 of 0.24 s.
  const shares = [0, 0.125, 0.25, 0.5, 0.14 / 0.24, 0.2 / 0.24];
  for (const [frame, share] of shares.entries()) expect(shareOfFrame(table, frame)).toBeCloseTo(share, 6);
});

it('finds the frame under a place, and the ends beyond them', () => {
  expect([-0.3, 0, 0.3, 0.5, 0.95, 1.4].map((share) => frameAtShare(table, share))).toEqual([0, 0, 2, 3, 5, 5]);
});
