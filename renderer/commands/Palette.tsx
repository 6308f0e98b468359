import { useId, useState } from 'react';
import { Dialog } from '../base/Dialog.tsx';
import { filterActs } from './actFilter.ts';
import { chordWords } from './chord.ts';
import { entriesNow } from './keyChoice.ts';
import { keysState } from './keysState.ts';
import type { KeyId } from './keyTable.ts';
import type { KeyActs } from './useKeys.ts';

const within = (length: number, index: number): number => Math.min(Math.max(0, index), Math.max(0, length - 1));

/** Every act of the screen by its name: typing filters, Enter does it. */
export function Palette({ acts, onClose }: { readonly acts: KeyActs; readonly onClose: () => void }) {
  const chosen = keysState((state) => state.chosen);
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const listId = useId();
  const entries = filterActs(
    entriesNow(chosen).filter(({ id }) => acts[id] !== undefined && id !== 'palette' && id !== 'ghost'),
    typed,
  );
  const run = (id: KeyId | undefined): void => {
    if (id === undefined) return;
    onClose();
    acts[id]?.(new KeyboardEvent('keydown'));
  };
  return (
    <Dialog title="Do something" onClose={onClose}>
      <form
        className="palette"
        onSubmit={(event) => {
          event.preventDefault();
          run(entries[at]?.id);
        }}
      >
        <input
          type="text"
          role="combobox"
          aria-label="Type what you want to do"
          aria-expanded="true"
          aria-controls={listId}
          aria-activedescendant={entries[at] === undefined ? undefined : `${listId}-${at}`}
          autoComplete="off"
          spellCheck={false}
          value={typed}
          onChange={(event) => {
            setTyped(event.target.value);
            setAt(0);
          }}
          onKeyDown={(event) => {
            const moves: Readonly<Record<string, number>> = { ArrowDown: at + 1, ArrowUp: at - 1 };
            const next = moves[event.key];
            if (next === undefined) return;
            event.preventDefault();
            setAt(within(entries.length, next));
            document.getElementById(`${listId}-${within(entries.length, next)}`)?.scrollIntoView({ block: 'nearest' });
          }}
        />
        <div role="listbox" id={listId} aria-label="Acts" className="palette-list">
          {entries.map((entry, index) => (
            <div
              key={entry.id}
              id={`${listId}-${index}`}
              role="option"
              tabIndex={-1}
              aria-selected={index === at}
              onPointerDown={(event) => {
                event.preventDefault();
                run(entry.id);
              }}
            >
              <span>{entry.label}</span>
              <kbd>{chordWords(entry.chords[0] ?? '').join(' ')}</kbd>
            </div>
          ))}
          {entries.length === 0 && <p className="soft">Nothing here has such a name.</p>}
        </div>
      </form>
    </Dialog>
  );
}
