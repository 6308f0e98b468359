import type { Box, ClipCover } from '../covers/cover.ts';
import type { TurnDeg } from '../framing/framing.ts';
import { turnedEdges, turnedPoint } from '../framing/picturePlaces.ts';
import type { PointPx } from '../recording/recording.ts';
import type { DiscBox, SetUp } from '../recording/setUp.ts';
import type { Drawn, Point } from './drawings/drawing.ts';

/** How a picture of some size is turned: what was placed on it goes along. */
export type Turning = { readonly size: { readonly width: number; readonly height: number }; readonly by: TurnDeg };

const isQuarter = ({ by }: Turning): boolean => by === 90 || by === 270;

/** To a thousandth of a pixel: what is turned four times is where it was. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000;

function turned(point: Point, { size, by }: Turning): Point {
  const { x, y } = turnedPoint(point, size, by);
  return { x: rounded(x), y: rounded(y) };
}

/** A shape on a picture that is turned. A plumb that no longer is one stays as a line. */
export function turnedDrawn(drawn: Drawn, turning: Turning): Drawn {
  const move = (point: Point): Point => turned(point, turning);
  switch (drawn.shape) {
    case 'plumb': {
      const [a, b] = drawn.points;
      return { shape: isQuarter(turning) ? 'line' : 'plumb', points: [move(a), move(b)] };
    }
    case 'line':
    case 'circle': {
      const [a, b] = drawn.points;
      return { shape: drawn.shape, points: [move(a), move(b)] };
    }
    case 'angle': {
      const [a, b, c] = drawn.points;
      return { shape: 'angle', points: [move(a), move(b), move(c)] };
    }
    case 'stroke':
      return { shape: 'stroke', points: drawn.points.map(move) };
    case 'text':
      return { shape: 'text', points: [move(drawn.points[0])], text: drawn.text };
  }
}

function turnedBox({ leftPx, topPx, widthPx, heightPx }: Box, { size, by }: Turning): Box {
  const edges = { left: leftPx, top: topPx, right: leftPx + widthPx, bottom: topPx + heightPx };
  const { left, top, right, bottom } = turnedEdges(edges, size, by);
  return {
    leftPx: rounded(left),
    topPx: rounded(top),
    widthPx: rounded(right - left),
    heightPx: rounded(bottom - top),
  };
}

/** What is covered, on a picture that is turned. */
export function turnedCover(cover: ClipCover, turning: Turning): ClipCover {
  if (cover.kind === 'head') return cover;
  return { ...cover, places: cover.places.map(({ frame, box }) => ({ frame, box: turnedBox(box, turning) })) };
}

function turnedPx({ xPx, yPx }: PointPx, turning: Turning): PointPx {
  const { x, y } = turned({ x: xPx, y: yPx }, turning);
  return { xPx: x, yPx: y };
}

function turnedDiscBox({ leftPx, topPx, rightPx, bottomPx }: DiscBox, { size, by }: Turning): DiscBox {
  const edges = { left: leftPx, top: topPx, right: rightPx, bottom: bottomPx };
  const { left, top, right, bottom } = turnedEdges(edges, size, by);
  return { leftPx: rounded(left), topPx: rounded(top), rightPx: rounded(right), bottomPx: rounded(bottom) };
}

/** What stands higher in the picture comes first. */
function plumbThrough(one: PointPx, other: PointPx): NonNullable<SetUp['plumb']> {
  return one.yPx <= other.yPx ? { top: one, bottom: other } : { top: other, bottom: one };
}

/**
 * What was stated of a clip so that it can be measured, on a picture that is turned. Which way somebody faces is read anew after a
 * quarter turn: who lies in the picture faces neither side.
 */
export function turnedSetUp(setUp: SetUp, turning: Turning): SetUp {
  const move = (point: PointPx): PointPx => turnedPx(point, turning);
  const { facing, knownLength, plumb } = setUp;
  const opposite = facing === 'left' ? 'right' : facing === 'right' ? 'left' : null;
  return {
    ...setUp,
    facing: turning.by === 0 ? facing : turning.by === 180 ? opposite : null,
    knownLength: knownLength && { ...knownLength, from: move(knownLength.from), to: move(knownLength.to) },
    plumb: plumb && plumbThrough(move(plumb.top), move(plumb.bottom)),
    clicks: setUp.clicks.map(({ at, box, ...click }) => ({
      ...click,
      at: move(at),
      ...(box && { box: turnedDiscBox(box, turning) }),
    })),
    depthClicks: setUp.depthClicks.map(({ frame, hipCrease, kneeTop }) => ({
      frame,
      hipCrease: move(hipCrease),
      kneeTop: move(kneeTop),
    })),
    backClicks: setUp.backClicks.map(({ frame, points: [a, b, c] }) => ({
      frame,
      points: [move(a), move(b), move(c)] as [PointPx, PointPx, PointPx],
    })),
  };
}
