import { boxAt } from '../../../../../engine/covers/cover.ts';
import { seenPoint } from '../../../../../engine/framing/picturePlaces.ts';
import { angleInTens, type NearSide, nearSideJoints } from '../../../../../engine/handover/nearSide.ts';
import { drawnOf, type Point, showsAt } from '../../../../../engine/review/drawings/drawing.ts';
import { lumaWeights, type PictureColours } from '../../../media/probe/pictureColours.ts';
import type { PictureSize } from '../../../media/probe/streams.ts';
import { type ClipToShow, type PictureNote, type PictureWords, partSeenOf, sizeSeenOf } from '../picture.ts';
import { coverPlanes } from './coverPlanes.ts';
import { drawShape, placedShape } from './drawnShape.ts';
import { casedWords, dot, ink, strokeCased, traceGapped } from './ink.ts';
import { type Layer, layOver } from './layer.ts';
import { boundsAround, openPainter, type Painter, type Pen, wholePicture } from './painter.ts';
import { type Extent, pathReader } from './pathReader.ts';
import { paintClock, paintPlate } from './plate.ts';

/** What to lay over a picture besides what the clip itself has. */
export type Shown = {
  readonly frame: number;
  /** How far the path of the load goes; null = no path. */
  readonly path: Extent | null;
  /** The lifter's near side; shown where nothing is said. */
  readonly body?: 'shown' | 'hidden';
  /** The drawings to show, by their ids; those of the frame where nothing is said. */
  readonly drawings?: readonly string[];
  /** Remarks whose plates are up. */
  readonly notes: readonly PictureNote[];
  /** The time that the clock in the picture shows, in microseconds; null = no clock. */
  readonly clockUs: number | null;
};

export type Overlay = {
  readonly painter: Painter;
  /** Covers what is to be covered, then draws over the bytes of the clip's picture. */
  readonly finish: (bytes: Uint8Array, shown: Shown) => void;
  /** Draws the plates of remarks alone. */
  readonly caption: (bytes: Uint8Array, notes: readonly PictureNote[]) => void;
};

/** Opens what draws over a clip's pictures of an even size. */
export async function openOverlay(
  clip: ClipToShow,
  {
    size,
    colours,
    words,
    said,
  }: {
    readonly size: PictureSize;
    readonly colours: PictureColours;
    readonly words: PictureWords;
    /** All else that it will be asked to write. */
    readonly said: readonly string[];
  },
): Promise<Overlay> {
  const written = clip.drawings.map(drawnOf).flatMap((drawn) => (drawn.shape === 'text' ? [drawn.text] : []));
  const everyWord = [words.knee, words.trunk, ...written, ...said].join(' ');
  const painter = await openPainter(size, lumaWeights(colours, clip.shown.height), everyWord);
  const part = partSeenOf(clip);
  const seen = sizeSeenOf(clip);
  const scale = { x: size.width / seen.width, y: size.height / seen.height };
  const scaled = (point: Point): Point => {
    const { x, y } = seenPoint(part, point);
    return { x: x * scale.x, y: y * scale.y };
  };
  const pathAt = clip.measurement === null ? null : pathReader(clip.measurement, clip.camera);

  const coverAll = (bytes: Uint8Array, frame: number) => {
    for (const cover of clip.covers) {
      const box = boxAt(cover, frame);
      if (box === null) continue;
      const one = scaled({ x: box.leftPx, y: box.topPx });
      const other = scaled({ x: box.leftPx + box.widthPx, y: box.topPx + box.heightPx });
      const [leftPx, topPx] = [Math.min(one.x, other.x), Math.min(one.y, other.y)];
      const sides = { widthPx: Math.abs(other.x - one.x), heightPx: Math.abs(other.y - one.y) };
      coverPlanes(bytes, size, { leftPx, topPx, ...sides }, cover.look);
    }
  };

  const pathPoints = (frame: number, extent: Extent) => {
    const path = pathAt?.(frame, extent) ?? { line: [], now: null };
    return { line: path.line.map((point) => point && scaled(point)), now: path.now && scaled(path.now) };
  };
  const isPoint = (point: Point | null): point is Point => point !== null;

  const paintPath = (frame: number, extent: Extent): Layer | null => {
    const { line, now } = pathPoints(frame, extent);
    const bounds = boundsAround([...line, now].filter(isPoint), 10 * painter.unit);
    if (bounds === null) return null;
    return painter.paint(bounds, (pen) => {
      strokeCased(pen, { widthPx: 3 * painter.unit, colour: ink.path }, () => traceGapped(pen, line));
      if (now !== null) dot(pen, now, 4.5 * painter.unit, ink.path);
    });
  };

  const bodyAt = (frame: number) => {
    const body = clip.body?.(frame) ?? null;
    if (body === null) return null;
    const joint = (point: Point | null) => point && scaled(point);
    const { shoulder, hip, knee, ankle } = body;
    return { ...body, shoulder: joint(shoulder), hip: joint(hip), knee: joint(knee), ankle: joint(ankle) };
  };
  const jointsOf = (frame: number): readonly Point[] => {
    const body = bodyAt(frame);
    return body === null ? [] : nearSideJoints.map((name) => body[name]).filter(isPoint);
  };
  const paintBody = (frame: number): Layer | null => {
    const body = bodyAt(frame);
    const bounds = boundsAround(jointsOf(frame), nearSideRoom(painter.unit));
    if (body === null || bounds === null) return null;
    return painter.paint(bounds, (pen) => drawNearSide(pen, body, { unit: painter.unit, words }));
  };

  const drawingsLayer = keptLast((key: string): Layer | null => {
    if (key === '') return null;
    const ids = new Set(key.split(' '));
    return painter.paint(wholePicture(size), (pen) => {
      for (const drawing of clip.drawings) {
        if (ids.has(drawing.id)) drawShape(pen, placedShape(drawnOf(drawing), scaled), painter.unit);
      }
    });
  });
  const plateLayer = keptLast((notes: readonly PictureNote[]): Layer | null => {
    const [first] = notes;
    if (first === undefined) return null;
    const path = pathPoints(first.frame, 'whole');
    return paintPlate(painter, notes, [...path.line.filter(isPoint), ...jointsOf(first.frame)]);
  });

  return {
    painter,
    finish: (bytes, { frame, path, notes, clockUs, body = 'shown', drawings }) => {
      coverAll(bytes, frame);
      const ofFrame = () => clip.drawings.filter((drawing) => showsAt(drawing, frame, clip.table)).map(({ id }) => id);
      const layers = [
        plateLayer(notes),
        clockUs === null ? null : paintClock(painter, words.clock(clockUs)),
        body === 'hidden' ? null : paintBody(frame),
        drawingsLayer((drawings ?? ofFrame()).join(' ')),
        path === null ? null : paintPath(frame, path),
      ];
      for (const layer of layers) if (layer !== null) layOver(bytes, size, layer);
    },
    caption: (bytes, notes) => {
      const layer = plateLayer(notes);
      if (layer !== null) layOver(bytes, size, layer);
    },
  };
}

/** Keeps what was made last: pictures that follow each other mostly show the same. */
function keptLast<Key, Made>(make: (key: Key) => Made): (key: Key) => Made {
  let last: { readonly key: Key; readonly made: Made } | null = null;
  return (key) => {
    if (last === null || last.key !== key) last = { key, made: make(key) };
    return last.made;
  };
}

/** Draws the lifter's near side from shoulder to ankle, with the bend of the knee and the lean of the trunk. */
export function drawNearSide(pen: Pen, body: NearSide, { unit, words }: NearSideLook): void {
  const { hip, knee } = body;
  const chain = nearSideJoints.map((joint) => body[joint]);
  strokeCased(pen, { widthPx: 1.5 * unit, colour: ink.chalk }, () => traceGapped(pen, chain));
  for (const joint of chain) if (joint !== null) dot(pen, joint, 3 * unit, ink.chalk);
  const beside = (text: string, { x, y }: Point) =>
    casedWords(pen, text, { at: { x: x + 10 * unit, y }, sizePx: 15 * unit, align: 'left' });
  if (knee !== null && body.kneeDeg !== null) beside(`${words.knee} ${angleInTens(body.kneeDeg)}`, knee);
  if (hip !== null && body.trunkLeanDeg !== null) beside(`${words.trunk} ${angleInTens(body.trunkLeanDeg)}`, hip);
}

export type NearSideLook = { readonly unit: number; readonly words: PictureWords };

/** Room that the words take beside the joints, in pixels. */
export const nearSideRoom = (unit: number): number => 150 * unit;
