import { chordSaid } from '../commands/keyChoice.ts';
import { keysState } from '../commands/keysState.ts';
import { hints, hintsState } from './state/hintsState.ts';

/** The first hint that was not put away yet. */
export function HintCard() {
  const { done, dismiss, dismissAll } = hintsState();
  const chosen = keysState((state) => state.chosen);
  const hint = hints.find(({ id }) => !done.includes(id));
  if (hint === undefined) return null;
  return (
    <aside className="hint-card" aria-label="Hint">
      <p>{hint.words((act) => chordSaid(chosen, act))}</p>
      <button type="button" className="quiet-button" onClick={() => dismiss(hint.id)}>
        Next hint
      </button>
      <button type="button" className="quiet-button" onClick={dismissAll}>
        No more hints
      </button>
    </aside>
  );
}
