import { hints, hintsState } from '../state/hintsState.ts';

/** The first hint that was not put away yet. */
export function HintCard() {
  const { done, dismiss, dismissAll } = hintsState();
  const hint = hints.find(({ id }) => !done.includes(id));
  if (hint === undefined) return null;
  return (
    <aside className="hint-card" aria-label="Hint">
      <p>{hint.words}</p>
      <button type="button" className="quiet-button" onClick={() => dismiss(hint.id)}>
        Next hint
      </button>
      <button type="button" className="quiet-button" onClick={dismissAll}>
        No more hints
      </button>
    </aside>
  );
}
