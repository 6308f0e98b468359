import type { Weight } from '../../../engine/rubric/rubric.ts';
import { KeyHint } from '../../parts/KeyHint.tsx';
import { FineTick, Strokes } from '../../parts/Strokes.tsx';
import { weightTitle } from '../../parts/weightTitle.ts';
import { mark, toggleFine } from '../acts/judgeActs.ts';

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
          <Strokes weight={weight} named="elsewhere" /> {weightTitle(weight)} <KeyHint act={weight} />
        </button>
      ))}
    </fieldset>
  );
}
