import { expect, it } from 'vitest';
import { angleDeg } from '../../../../engine/review/drawings/geometry.ts';
import { shapeThrough, usualShape } from '../../../../renderer/review/drawings/shapes.ts';

const a = { x: 10, y: 20 };
const b = { x: 14, y: 80 };

it('keeps a plumb vertical, below the point where it began', () => {
  expect(shapeThrough('plumb', [a, b])?.points).toEqual([a, { x: 10, y: 80 }]);
});

it('lets points still to come lie on the last one', () => {
  expect(shapeThrough('angle', [])).toBeNull();
  expect(shapeThrough('angle', [a])?.points).toEqual([a, a, a]);
  expect(shapeThrough('angle', [a, b])?.points).toEqual([a, b, b]);
});

it.each(['line', 'angle', 'plumb', 'circle', 'stroke'] as const)('puts a %s wholly inside the picture', (shape) => {
  for (const picture of [
    { width: 1920, height: 1080 },
    { width: 480, height: 854 },
  ]) {
    for (const { x, y } of usualShape(shape, picture).points) {
      expect(x > 0 && x < picture.width && y > 0 && y < picture.height).toBe(true);
    }
  }
});

it('begins an angle as a right one', () => {
  const drawn = usualShape('angle', { width: 1280, height: 720 });
  expect(drawn.shape === 'angle' && angleDeg(...drawn.points)).toBeCloseTo(90, 9);
});
