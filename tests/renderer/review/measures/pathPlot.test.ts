import { expect, it } from 'vitest';
import { expectedLines, plottedReps, pointInPlot, reachOf } from '../../../../renderer/review/measures/pathPlot.ts';
import { rep } from './rep.ts';

/** Five frames a second apart; the load goes down 0.5 m, strays 0.03 m forward at the lowest place, and is lost once. */
const curves = {
  timesS: [0, 1, 2, 3, 4],
  positionPx: [null, null, null, null, null],
  heightM: [0.2, 0.1, -0.4, null, 0.1],
  forwardM: [0.01, 0.01, 0.04, null, 0.01],
  speedMps: [null, null, null, null, null],
  heightPlusMinusM: null,
};
const one = {
  ...rep,
  startS: 1,
  endS: 4,
  largestDeviation: { m: { value: 0.03, plusMinus: 0.004 }, atS: 2, heightShare: 0 },
};

it('lays a rep out from where it began, over its lowest place, with a gap where the load was lost', () => {
  const [plotted] = plottedReps({ reps: [one], curves });
  expect(
    plotted?.points.map((point) => point && [point.forwardM, point.heightM].map((m) => Math.round(m * 1000))),
  ).toEqual([[0, 500], [30, 0], null, [0, 500]]);
  expect(plotted?.deviation?.heightM).toBe(0);
});

it('leaves out a rep of which nothing was seen', () => {
  expect(plottedReps({ reps: [{ ...one, startS: 3, endS: 3.5 }], curves })).toEqual([]);
});

it('reaches far enough for the tolerance and for every path', () => {
  const reps = plottedReps({ reps: [one], curves });
  const size = { width: 200, height: 100 };
  const reach = reachOf(reps, 0.02);
  for (const point of reps.flatMap(({ points }) => points.filter((known) => known !== null))) {
    const { xPx, yPx } = pointInPlot(point, reach, size);
    expect(xPx).toBeGreaterThanOrEqual(0);
    expect(xPx).toBeLessThanOrEqual(size.width);
    expect(yPx).toBeGreaterThanOrEqual(0);
    expect(yPx).toBeLessThanOrEqual(size.height);
  }
  expect(reachOf([], 0.06).sideM).toBeGreaterThan(0.06);
});

it('puts forward to the right and up upwards', () => {
  const reach = { sideM: 0.1, upM: 1 };
  const size = { width: 200, height: 100 };
  expect(pointInPlot({ forwardM: 0.05, heightM: 0.25 }, reach, size)).toEqual({ xPx: 150, yPx: 75 });
});

const asking = (path: { readonly shape: 'vertical' | 'rail' | 'curve' | 'arc'; readonly railTiltDeg?: number }) => {
  const seconds: [number, number] = [0, 1];
  const tempo = { eccentricS: seconds, pauseStretchedS: seconds, concentricS: null, pauseShortenedS: seconds };
  return {
    targets: {
      tempo: { growth: tempo, strength: tempo, skill: tempo },
      depth: '',
      path: { toleranceM: 0.02, ...path },
      headDeg: 20,
      spine: '',
    },
  };
};

it('expects a plumb line through the start, a rail that leans, and nothing of an arc', () => {
  const reps = plottedReps({ reps: [one], curves });
  const [shown] = reps;
  if (shown === undefined) throw new Error('the rep is plotted');
  const [upright] = expectedLines(asking({ shape: 'vertical' }), shown, reps, 0.6);
  expect(upright?.map(({ heightM }) => heightM)).toEqual([0, 0.6]);
  for (const { forwardM } of upright ?? []) expect(forwardM).toBeCloseTo(0, 9);
  // The rep begins 0.5 m up; half a metre lower, a rail of 45 degrees is half a metre further back.
  const [rail] = expectedLines(asking({ shape: 'rail', railTiltDeg: 45 }), shown, reps, 0.5);
  expect(rail?.[0]?.forwardM).toBeCloseTo(-0.5, 9);
  expect(rail?.[1]?.forwardM).toBeCloseTo(0, 9);
  expect(expectedLines(asking({ shape: 'arc' }), shown, reps, 0.6)).toEqual([]);
  expect(expectedLines(asking({ shape: 'curve' }), shown, reps, 0.6)).toEqual([]);
});

it('takes the middle of the reps for a curve', () => {
  const way = (forwardM: number) =>
    [0, 0.25, 0.5].map((heightM) => ({ forwardM: heightM === 0.25 ? forwardM : 0, heightM }));
  const reps = [0.01, 0.09, 0.03].map((forwardM) => ({
    rep: one,
    points: way(forwardM),
    eccentric: way(forwardM),
    concentric: [],
    deviation: null,
  }));
  const [shown] = reps;
  if (shown === undefined) throw new Error('there are three');
  const lines = expectedLines(asking({ shape: 'curve' }), shown, reps, 0.5);
  expect(lines).toHaveLength(1);
  expect(lines[0]?.find(({ heightM }) => Math.abs(heightM - 0.25) < 1e-9)?.forwardM).toBe(0.03);
});
