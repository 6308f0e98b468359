import type { Weight } from '../../../engine/rubric/rubric.ts';
import { FineTick, Strokes } from '../../base/Strokes.tsx';
import { fine, weightCommands } from '../commands/judging.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';

const order: readonly Weight[] = ['keep', 'prefer', 'adjust', 'correct', 'stop'];

/** The marks a cell can get, with their keys: the same commands for the mouse. */
export function WeightBar() {
  return (
    <fieldset className="weight-bar" aria-label="Mark the cell">
      <ReviewButton command={fine}>
        <FineTick named="elsewhere" />
      </ReviewButton>
      {order.map((weight) => (
        <ReviewButton key={weight} command={weightCommands[weight]} weight={weight}>
          <Strokes weight={weight} named="elsewhere" />
        </ReviewButton>
      ))}
    </fieldset>
  );
}
