import type { Drawn } from '../../../engine/review/drawings/drawing.ts';
import { sayNarration } from '../../words/sayNarration.ts';
import { DrawnShape } from './DrawnShape.tsx';

type NarratedShapesProps = {
  readonly shapes: readonly Drawn[];
  /** Picture pixels that one pixel of the screen covers. */
  readonly unit: number;
};

/** What was drawn over the picture when a narration was recorded, while it is heard. */
export function NarratedShapes({ shapes, unit }: NarratedShapesProps) {
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of strokes is one picture to a reader.
    <g role="img" aria-label={sayNarration('drawnThen')} data-testid="narrated-shapes" data-count={shapes.length}>
      {shapes.map((drawn) => (
        <DrawnShape key={JSON.stringify(drawn)} drawn={drawn} unit={unit} />
      ))}
    </g>
  );
}
