import { type SeenPart, seenEdges, seenPoint } from '../framing/picturePlaces.ts';
import type { PointPx } from '../recording/recording.ts';
import type { DiscBox, SetUp } from '../recording/setUp.ts';
import type { Drawing, Point } from './drawings/drawing.ts';
import type { Clip } from './review.ts';

/** A copy that holds what is seen of a picture and nothing else: which part, and how many of the copy's pixels one of the picture's is. */
export type SeenCopy = { readonly part: SeenPart; readonly scale: number };

/** A clip whose places are those of a copy of what is seen of it: its framing is in the copy's pictures already. */
export function clipOnCopy({ framing: _, drawings, setUp, ...clip }: Clip, copy: SeenCopy): Clip {
  return {
    ...clip,
    ...(drawings && { drawings: drawings.map((drawing) => drawingOnCopy(drawing, copy)) }),
    ...(setUp && { setUp: setUpOnCopy(setUp, copy) }),
  };
}

const hundredth = (px: number): number => Math.round(100 * px) / 100;

function pointOnCopy(point: Point, { part, scale }: SeenCopy): Point {
  const { x, y } = seenPoint(part, point);
  return { x: hundredth(x * scale), y: hundredth(y * scale) };
}

function drawingOnCopy(drawing: Drawing, copy: SeenCopy): Drawing {
  const move = (point: Point) => pointOnCopy(point, copy);
  switch (drawing.shape) {
    case 'line':
    case 'plumb':
    case 'circle': {
      const [a, b] = drawing.points;
      return { ...drawing, points: [move(a), move(b)] };
    }
    case 'angle': {
      const [a, b, c] = drawing.points;
      return { ...drawing, points: [move(a), move(b), move(c)] };
    }
    case 'stroke':
      return { ...drawing, points: drawing.points.map(move) };
    case 'text':
      return { ...drawing, points: [move(drawing.points[0])] };
  }
}

function boxOnCopy({ leftPx, topPx, rightPx, bottomPx }: DiscBox, { part, scale }: SeenCopy): DiscBox {
  const edges = seenEdges(part, { left: leftPx, top: topPx, right: rightPx, bottom: bottomPx });
  return {
    leftPx: hundredth(edges.left * scale),
    topPx: hundredth(edges.top * scale),
    rightPx: hundredth(edges.right * scale),
    bottomPx: hundredth(edges.bottom * scale),
  };
}

/** In a mirror the lifter faces the other way. */
function setUpOnCopy(setUp: SetUp, copy: SeenCopy): SetUp {
  const move = ({ xPx, yPx }: PointPx): PointPx => {
    const { x, y } = pointOnCopy({ x: xPx, y: yPx }, copy);
    return { xPx: x, yPx: y };
  };
  const { facing, knownLength, plumb } = setUp;
  const opposite = facing === 'left' ? 'right' : facing === 'right' ? 'left' : null;
  return {
    ...setUp,
    facing: copy.part.mirrored ? opposite : facing,
    knownLength: knownLength && { ...knownLength, from: move(knownLength.from), to: move(knownLength.to) },
    plumb: plumb && { top: move(plumb.top), bottom: move(plumb.bottom) },
    clicks: setUp.clicks.map(({ at, radiusPx, box, ...click }) => ({
      ...click,
      at: move(at),
      ...(radiusPx !== undefined && { radiusPx: Math.max(2, hundredth(radiusPx * copy.scale)) }),
      ...(box && { box: boxOnCopy(box, copy) }),
    })),
    depthClicks: setUp.depthClicks.map(({ frame, hipCrease, kneeTop }) => ({
      frame,
      hipCrease: move(hipCrease),
      kneeTop: move(kneeTop),
    })),
    backClicks: setUp.backClicks.map(({ frame, points: [a, b, c] }): SetUp['backClicks'][number] => ({
      frame,
      points: [move(a), move(b), move(c)],
    })),
  };
}
