import { seenPoint } from '../../../../../engine/framing/picturePlaces.ts';
import { nearSideJoints } from '../../../../../engine/handover/nearSide.ts';
import { drawnOf, type Point, showsAt } from '../../../../../engine/review/drawings/drawing.ts';
import type { PictureSize } from '../../../media/probe/streams.ts';
import { type Bounds, boundsAround, wholePicture } from '../overlay/painter.ts';
import { pathReader } from '../overlay/pathReader.ts';
import { type ClipToShow, partSeenOf, sizeSeenOf } from '../picture.ts';

/** Room around the near side, in shares of the height of its joints: head and hands above, feet below, arms to the sides. */
const roomAround = { top: 0.45, bottom: 0.2, side: 0.4 };
/** Room to both sides of a load's path without joints, in shares of the picture's height: the lifter stands within it. */
const roomBesidePath = 0.4;
/** Width over height: neither a strip nor a ribbon. */
const shape = { least: 3 / 4, most: 4 / 3 };
/** A crop that leaves out less than this share of the picture shows nothing better. */
const leastLeftOut = 0.2;

/**
 * The part of what is seen of a clip that shows the lifter and what is drawn at some frames: around the joints where they
 * were seen, else around the load's path; null where the whole picture is as good, or where nothing says who lifts.
 */
export function lifterCrop(clip: ClipToShow, frames: readonly number[]): Bounds | null {
  const [part, shown] = [partSeenOf(clip), sizeSeenOf(clip)];
  const seen = (points: readonly Point[]) => points.map((point) => seenPoint(part, point));
  const path = seen(frames.flatMap((frame) => pathPoints(clip, frame)));
  const joints = seen(frames.flatMap((frame) => jointPoints(clip, frame)));
  const lifter = aroundJoints(joints) ?? aroundPath(path, shown);
  if (lifter === null) return null;
  const drawn = boundsAround(
    [...path, ...seen(frames.flatMap((frame) => drawnPoints(clip, frame)))],
    0.03 * shown.height,
  );
  const crop = within(shaped(drawn === null ? lifter : union(lifter, drawn)), shown);
  const share = ((crop.right - crop.left) * (crop.bottom - crop.top)) / (shown.width * shown.height);
  return share > 1 - leastLeftOut ? null : crop;
}

const isPoint = (point: Point | null): point is Point => point !== null;

function pathPoints({ measurement, camera }: ClipToShow, frame: number): readonly Point[] {
  if (measurement === null) return [];
  const { line, now } = pathReader(measurement, camera)(frame, 'whole');
  return [...line, now].filter(isPoint);
}

function jointPoints({ body }: ClipToShow, frame: number): readonly Point[] {
  const seen = body?.(frame) ?? null;
  return seen === null ? [] : nearSideJoints.map((name) => seen[name]).filter(isPoint);
}

const drawnPoints = ({ drawings, table }: ClipToShow, frame: number): readonly Point[] =>
  drawings.filter((drawing) => showsAt(drawing, frame, table)).flatMap((drawing) => drawnOf(drawing).points);

function aroundJoints(joints: readonly Point[]): Bounds | null {
  const seen = boundsAround(joints, 0);
  if (seen === null || seen.bottom <= seen.top) return null;
  const height = seen.bottom - seen.top;
  return {
    left: seen.left - roomAround.side * height,
    right: seen.right + roomAround.side * height,
    top: seen.top - roomAround.top * height,
    bottom: seen.bottom + roomAround.bottom * height,
  };
}

function aroundPath(path: readonly Point[], { height }: PictureSize): Bounds | null {
  const seen = boundsAround(path, roomBesidePath * height);
  return seen && { ...seen, top: 0, bottom: height };
}

const union = (one: Bounds, other: Bounds): Bounds => ({
  left: Math.min(one.left, other.left),
  top: Math.min(one.top, other.top),
  right: Math.max(one.right, other.right),
  bottom: Math.max(one.bottom, other.bottom),
});

/** Widened or heightened about its middle, until its shape is one to look at. */
function shaped({ left, top, right, bottom }: Bounds): Bounds {
  const [width, height] = [right - left, bottom - top];
  const wider = Math.max(0, shape.least * height - width) / 2;
  const higher = Math.max(0, width / shape.most - height) / 2;
  return { left: left - wider, right: right + wider, top: top - higher, bottom: bottom + higher };
}

/** Moved into the picture where it fits, else cut at its edges. */
function within({ left, top, right, bottom }: Bounds, size: PictureSize): Bounds {
  const whole = wholePicture(size);
  const shift = (from: number, to: number, end: number) => Math.max(0, -from) - Math.max(0, to - end);
  const [x, y] = [shift(left, right, whole.right), shift(top, bottom, whole.bottom)];
  return {
    left: Math.max(0, left + x),
    right: Math.min(whole.right, right + x),
    top: Math.max(0, top + y),
    bottom: Math.min(whole.bottom, bottom + y),
  };
}
