import { directionOf } from '../../../../../engine/document/words.ts';
import { setFace } from '../overlay/faces.ts';
import { ink } from '../overlay/ink.ts';
import type { Layer } from '../overlay/layer.ts';
import { type Painter, wholePicture } from '../overlay/painter.ts';
import { wrapText } from '../overlay/wrapText.ts';

/** What the card in front of a clip says: the exercise, then name and date; all as the trainee wants to see it. */
export type CardWords = {
  readonly heading: string;
  readonly lines: readonly string[];
  /** What the marks of the notes mean; '' where there are none. */
  readonly legend: string;
};

/** The card, filling the picture. */
export function paintCard(painter: Painter, { heading, lines, legend }: CardWords): Layer | null {
  const { size, unit, pen } = painter;
  const margin = Math.round(size.width * 0.08);
  const wrapped = (text: string, sizePx: number, weight: 400 | 700) => {
    setFace(pen, sizePx, weight);
    return wrapText(text, size.width - 2 * margin, (part) => pen.measureText(part).width).map((line) => ({
      ...{ text: line, sizePx, weight, direction: directionOf(text) },
    }));
  };
  const set = [
    ...wrapped(heading, 34 * unit, 700),
    ...lines.flatMap((line) => wrapped(line, 22 * unit, 400)),
    ...wrapped(legend, 16 * unit, 400),
  ];
  const height = set.reduce((sum, { sizePx }) => sum + 1.4 * sizePx, 0);
  return painter.paint(wholePicture(size), () => {
    pen.fillStyle = ink.dark;
    pen.fillRect(0, 0, size.width, size.height);
    pen.fillStyle = ink.chalk;
    pen.textBaseline = 'middle';
    let top = Math.max(0, (size.height - height) / 2);
    for (const { text, sizePx, weight, direction } of set) {
      const fromRight = direction === 'rtl';
      setFace(pen, sizePx, weight);
      pen.direction = direction;
      pen.textAlign = fromRight ? 'right' : 'left';
      pen.fillText(text, fromRight ? size.width - margin : margin, top + 0.7 * sizePx);
      top += 1.4 * sizePx;
    }
    pen.direction = 'ltr';
  });
}
