import { expect, it } from 'vitest';
import { curveLine, curvesOf, phaseStretches } from '../../../../renderer/review/strip/curveLines.ts';
import { rep } from '../measures/rep.ts';

it('draws a line through what was seen and leaves a gap where nothing was', () => {
  expect(curveLine([0, 1, null, 3], [0, 0.25, 0.5, 0.75], (value) => value)).toBe('M0,0L0.25,1M0.75,3Z');
});

/** The y of every point of a path. */
const heightsIn = (path: string): readonly number[] =>
  [...path.matchAll(/[ML][\d.]+,([\d.]+)/g)].map(([, y]) => Number(y));

const curves = {
  timesS: [0, 1, 2],
  positionPx: [
    { xPx: 5, yPx: 100 },
    { xPx: 5, yPx: 200 },
    { xPx: 5, yPx: 150 },
  ],
  heightM: [0, -0.5, -0.25],
  forwardM: [0, 0, 0],
  speedMps: [0, -0.4, 0.2],
  heightPlusMinusM: null,
};

it('draws the highest place at the top, the lowest at the bottom, and speed about the middle', () => {
  const { height, speed } = curvesOf(curves, [0, 0.5, 1]);
  const [top = 0, bottom = 0, between = 0] = heightsIn(height);
  expect(top).toBeGreaterThan(0);
  expect(bottom).toBeLessThan(1);
  expect(between).toBeCloseTo((top + bottom) / 2, 4);
  const [still = 0, down = 0, up = 0] = heightsIn(speed);
  expect(still).toBe(0.5);
  expect(down - 0.5).toBeCloseTo(2 * (0.5 - up), 4);
});

it('draws heights by their pixels where there is no scale', () => {
  const unscaled = { ...curves, heightM: [null, null, null] };
  expect(curvesOf(unscaled, [0, 0.5, 1]).height).toBe(curvesOf(curves, [0, 0.5, 1]).height);
});

it('lays out the phases a rep has along the clip', () => {
  const drawn = phaseStretches([rep], 10);
  expect(drawn.map(({ phase }) => phase)).toEqual(['eccentric', 'pauseStretched', 'concentric']);
  const edges = [0.1, 0.3, 0.34, 0.46];
  drawn.forEach(({ from, to }, place) => {
    expect(from).toBeCloseTo(edges[place] ?? 0, 9);
    expect(to).toBeCloseTo(edges[place + 1] ?? 0, 9);
  });
});
