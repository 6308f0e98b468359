import type { Weight } from '../../../engine/rubric/rubric.ts';
import { capitalized } from '../../base/capitalized.ts';
import { FineTick, Strokes } from '../../base/Strokes.tsx';
import { KeyHint } from '../../commands/KeyHint.tsx';
import { mark, toggleFine } from '../commands/judgeActs.ts';

const order: readonly Weight[] = ['keep', 'prefer', 'adjust', 'correct', 'stop'];

/** The marks a cell can get, with their keys: the same acts for the mouse. */
export function WeightBar() {
  return (
    <fieldset className="weight-bar" aria-label="Mark the cell">
      <button type="button" onClick={() => void toggleFine()}>
        <FineTick named="elsewhere" /> Fine <KeyHint act="fine" />
      </button>
      {order.map((weight) => (
        <button key={weight} type="button" data-weight={weight} onClick={() => void mark(weight)}>
          <Strokes weight={weight} named="elsewhere" /> {capitalized(weight)} <KeyHint act={weight} />
        </button>
      ))}
    </fieldset>
  );
}
