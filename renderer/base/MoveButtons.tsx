import {
  ArrowDown,
  ArrowLeft,
  ArrowRight,
  ArrowUp,
  FoldHorizontal,
  FoldVertical,
  type LucideIcon,
  UnfoldHorizontal,
  UnfoldVertical,
} from 'lucide-react';
import type { Point } from '../../engine/review/drawings/drawing.ts';
import { sayStage } from '../words/sayStage.ts';

type Size = { readonly width: number; readonly height: number };

type MoveButtonsProps = {
  /** What is moved, by the name that it has on the screen. */
  readonly part: string;
  readonly picture: Size;
  /** Moves it by picture pixels, as they are seen, and saves it. */
  readonly onMove: (by: Point) => void;
  /** Makes it wider and taller by picture pixels, and saves it; left out where it has one size. */
  readonly onSize?: (by: Point) => void;
};

type Press = readonly [
  words: 'left' | 'right' | 'up' | 'down' | 'wider' | 'narrower' | 'taller' | 'lower',
  LucideIcon,
  Point,
];

const moves: readonly Press[] = [
  ['left', ArrowLeft, { x: -1, y: 0 }],
  ['right', ArrowRight, { x: 1, y: 0 }],
  ['up', ArrowUp, { x: 0, y: -1 }],
  ['down', ArrowDown, { x: 0, y: 1 }],
];
const sizes: readonly Press[] = [
  ['wider', UnfoldHorizontal, { x: 1, y: 0 }],
  ['narrower', FoldHorizontal, { x: -1, y: 0 }],
  ['taller', UnfoldVertical, { x: 0, y: 1 }],
  ['lower', FoldVertical, { x: 0, y: -1 }],
];

/** One press moves by a hundredth of the picture's longer side. */
const stepPx = ({ width, height }: Size): number => Math.max(1, Math.round(Math.max(width, height) / 100));

/** What is dragged over the picture, moved and sized by clicks instead, for hands that can't drag. */
export function MoveButtons({ part, picture, onMove, onSize }: MoveButtonsProps) {
  const step = stepPx(picture);
  const buttons = (presses: readonly Press[], run: (by: Point) => void) =>
    presses.map(([words, Icon, { x, y }]) => (
      <button
        key={words}
        type="button"
        className="icon-button"
        aria-label={sayStage(words)}
        title={sayStage(words)}
        onClick={() => run({ x: x * step, y: y * step })}
      >
        <Icon aria-hidden="true" />
      </button>
    ));
  return (
    <fieldset className="move-buttons" aria-label={sayStage('movePart', { part })}>
      {buttons(moves, onMove)}
      {onSize !== undefined && buttons(sizes, onSize)}
    </fieldset>
  );
}
