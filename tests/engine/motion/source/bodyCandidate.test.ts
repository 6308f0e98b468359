import { expect, test } from 'vitest';
import { bodyCandidates } from '../../../../engine/motion/source/bodyCandidate.ts';
import { bodiesOf, knownLifter } from '../joints/knownLifter.ts';

test('heights of the hip go down and up with the figure’s, rep by rep', () => {
  const lifter = knownLifter('squat-side');
  const candidate = bodyCandidates({
    bodies: { frames: bodiesOf(lifter) },
    timesS: lifter.timesS,
    camera: null,
    pictureHeightPx: lifter.height,
  })('hips');
  const heights = candidate?.heightsPx ?? [];
  const pairs = heights.flatMap((height, i) => (height === null ? [] : [[height, lifter.hipZ[i] ?? 0] as const]));
  expect(pairs).toHaveLength(lifter.timesS.length);
  expect(correlation(pairs)).toBeGreaterThan(0.99);
});

function correlation(pairs: readonly (readonly [number, number])[]): number {
  const mean = (of: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[of], 0) / pairs.length;
  const [x, y] = [mean(0), mean(1)];
  const sum = (value: (dx: number, dy: number) => number) =>
    pairs.reduce((all, [a, b]) => all + value(a - x, b - y), 0);
  return sum((dx, dy) => dx * dy) / Math.sqrt(sum((dx) => dx * dx) * sum((_, dy) => dy * dy));
}
