import { expect, it } from 'vitest';
import { frameAtSeconds } from '../../../../engine/motion/measurement.ts';
import { gappedPath } from '../../../../renderer/review/model/pictureGeometry.ts';

const at = (xPx: number, yPx: number) => ({ xPx, yPx });

it('draws through the points it has, and leaves out what was not seen', () => {
  const points = [at(0, 0), at(1, 2), null, null, at(5, 5.128), at(6, 6)];
  expect(gappedPath(points, 0, 5)).toBe('M0,0L1,2M5,5.13L6,6');
});

it('draws a point alone between gaps as a dot', () => {
  expect(gappedPath([null, at(3, 4), null], 0, 2)).toBe('M3,4Z');
  expect(gappedPath([null, at(3, 4)], 0, 1)).toBe('M3,4Z');
});

it('keeps to the stretch that was asked for, and inside the list', () => {
  const points = [at(0, 0), at(1, 1), at(2, 2), at(3, 3)];
  expect(gappedPath(points, 1, 2)).toBe('M1,1L2,2');
  expect(gappedPath(points, -5, 1)).toBe('M0,0L1,1');
  expect(gappedPath(points, 3, 99)).toBe('M3,3Z');
  expect(gappedPath(points, 2, 1)).toBe('');
});

it.each([
  [-1, 0],
  [0, 0],
  [0.05, 0],
  [0.1, 1],
  [0.33, 2],
  [0.5, 3],
  [9, 3],
])('finds the frame on screen at %s s', (seconds, place) => {
  expect(frameAtSeconds([0, 0.1, 0.3, 0.5], seconds)).toBe(place);
});
