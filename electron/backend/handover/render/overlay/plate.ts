import { type Direction, directionOf } from '../../../../../engine/document/words.ts';
import type { Point } from '../../../../../engine/review/drawings/drawing.ts';
import { strokes } from '../../../../../engine/sheet/sheetLanguage.ts';
import type { PictureNote } from '../picture.ts';
import { setFace } from './faces.ts';
import { ink } from './ink.ts';
import type { Layer } from './layer.ts';
import type { Bounds, Painter, Pen } from './painter.ts';
import { wrapText } from './wrapText.ts';

/** Sizes of the words, tried from the largest, in units. */
const wordSizes = [17, 15, 13] as const;
const mostLines = 6;
const headingSize = 18;

type Line = {
  readonly text: string;
  readonly sizePx: number;
  readonly weight: 400 | 700;
  /** Of the whole paragraph that the line is of. */
  readonly direction: Direction;
};

/** The plate of remarks in a corner of the picture, out of the way of some points: of each its strokes, criterion, words. */
export function paintPlate(painter: Painter, notes: readonly PictureNote[], avoid: readonly Point[]): Layer | null {
  const { size, unit, pen } = painter;
  const room = 10 * unit;
  const widest = Math.min(size.width - 4 * room, Math.max(0.42 * size.width, 260 * unit));
  const lines = notes.flatMap((note) => linesOf(pen, note, { unit, widest }));
  const widths = lines.map((line) => widthIn(pen, line));
  const width = Math.max(...widths) + 2 * room;
  const height = lines.reduce((sum, { sizePx }) => sum + 1.3 * sizePx, 0) + 1.4 * room;
  const bounds = freestCorner(size, { width, height, room, clockHeight: clockRow * unit }, avoid);
  return painter.paint(bounds, () => {
    pen.globalAlpha = 0.84;
    pen.fillStyle = ink.dark;
    pen.fillRect(bounds.left, bounds.top, width, height);
    pen.globalAlpha = 1;
    let top = bounds.top + 0.7 * room;
    for (const line of lines) {
      const fromRight = line.direction === 'rtl';
      setFace(pen, line.sizePx, line.weight);
      pen.direction = line.direction;
      pen.textAlign = fromRight ? 'right' : 'left';
      pen.textBaseline = 'middle';
      pen.fillStyle = ink.chalk;
      pen.fillText(line.text, fromRight ? bounds.left + width - room : bounds.left + room, top + 0.65 * line.sizePx);
      top += 1.3 * line.sizePx;
    }
    pen.direction = 'ltr';
  });
}

const clockSize = 15;
const clockRoom = 6;
/** What the clock takes of the picture's lower edge, in units. */
const clockRow = 1.4 * clockSize + clockRoom;

/** The clock, at the lower right, below the plates there. */
export function paintClock(painter: Painter, text: string): Layer | null {
  const { size, unit, pen } = painter;
  const sizePx = clockSize * unit;
  const width = widthIn(pen, { text, sizePx, weight: 400 }) + 2 * clockRoom * unit;
  const [left, top] = [size.width - clockRoom * unit - width, size.height - clockRow * unit];
  const bounds = { left, top, right: left + width, bottom: top + 1.4 * sizePx };
  return painter.paint(bounds, () => {
    pen.globalAlpha = 0.84;
    pen.fillStyle = ink.dark;
    pen.fillRect(left, top, width, 1.4 * sizePx);
    pen.globalAlpha = 1;
    setFace(pen, sizePx, 400);
    pen.direction = 'ltr';
    pen.textAlign = 'left';
    pen.textBaseline = 'middle';
    pen.fillStyle = ink.chalk;
    pen.fillText(text, left + clockRoom * unit, top + 0.7 * sizePx);
  });
}

function widthIn(pen: Pen, { text, sizePx, weight }: Omit<Line, 'direction'>): number {
  setFace(pen, sizePx, weight);
  return pen.measureText(text).width;
}

function linesOf(
  pen: Pen,
  { severity, heading, words }: PictureNote,
  { unit, widest }: { readonly unit: number; readonly widest: number },
): readonly Line[] {
  const wrapped = (text: string, sizePx: number, face: 400 | 700): readonly Line[] =>
    text.split('\n').flatMap((paragraph) =>
      wrapText(paragraph, widest, (part) => widthIn(pen, { text: part, sizePx, weight: face })).map((line) => ({
        ...{ text: line, sizePx, weight: face, direction: directionOf(paragraph) },
      })),
    );
  const head = wrapped(severity === null ? heading : `${strokes[severity]} ${heading}`, headingSize * unit, 700);
  const tried = wordSizes.map((wordSize) => wrapped(words, wordSize * unit, 400));
  const fitting = tried.find((lines) => lines.length <= mostLines);
  if (fitting !== undefined) return [...head, ...fitting];
  const cut = (tried.at(-1) ?? []).slice(0, mostLines);
  return [...head, ...cut.map((line, index) => (index < cut.length - 1 ? line : { ...line, text: `${line.text} …` }))];
}

/** The corner whose plate hides the fewest of the points; of equals, that at the lower left. */
function freestCorner(
  { width: pictureWidth, height: pictureHeight }: Painter['size'],
  {
    width,
    height,
    room,
    clockHeight,
  }: { readonly width: number; readonly height: number; readonly room: number; readonly clockHeight: number },
  avoid: readonly Point[],
): Bounds {
  const [right, bottom] = [pictureWidth - room - width, pictureHeight - room - height];
  const corners = [
    { left: room, top: bottom },
    { left: right, top: Math.min(bottom, pictureHeight - clockHeight - height) },
    { left: room, top: room },
    { left: right, top: room },
  ].map(({ left, top }): Bounds => ({ left, top, right: left + width, bottom: top + height }));
  const hidden = (corner: Bounds) =>
    avoid.filter(({ x, y }) => x >= corner.left && x <= corner.right && y >= corner.top && y <= corner.bottom).length;
  const counts = corners.map(hidden);
  return corners[counts.indexOf(Math.min(...counts))] ?? { left: room, top: bottom, right: room + width, bottom };
}
