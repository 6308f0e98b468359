import { useEffect, useState } from 'react';
import { Dialog } from '../base/Dialog.tsx';
import { chordOfPress, chordWords } from './chord.ts';
import { entriesNow } from './keyChoice.ts';
import { keysState } from './keysState.ts';
import { type KeyEntry, type KeyId, keyGroups } from './keyTable.ts';

/** All keys, by group; each can be changed. */
export function KeySheet({ onClose }: { readonly onClose: () => void }) {
  const chosen = keysState((state) => state.chosen);
  const [waiting, setWaiting] = useState<KeyId | null>(null);
  const [said, setSaid] = useState('');
  const entries = entriesNow(chosen);
  useEffect(() => {
    if (waiting === null) return;
    const onKeyDown = (event: KeyboardEvent): void => {
      event.preventDefault();
      event.stopPropagation();
      const chord = event.key === 'Escape' ? 'Escape' : chordOfPress(event);
      if (chord === null) return;
      setWaiting(null);
      setSaid(chord === 'Escape' ? '' : keysState.getState().give(waiting, chord));
    };
    window.addEventListener('keydown', onKeyDown, true);
    return () => window.removeEventListener('keydown', onKeyDown, true);
  }, [waiting]);
  return (
    <Dialog title="Keys" onClose={onClose} size="wide">
      <p className="key-sheet-head">
        <span role="status">
          {waiting === null
            ? said
            : `Press the new key for “${entries.find(({ id }) => id === waiting)?.label}”; Escape leaves it.`}
        </span>
        <button
          type="button"
          disabled={Object.keys(chosen).length === 0}
          onClick={() => {
            keysState.getState().giveAllBack();
            setSaid('All keys are the usual ones again.');
          }}
        >
          All usual keys
        </button>
      </p>
      <div className="key-sheet">
        {keyGroups.map((group) => (
          <section key={group}>
            <h3>{group}</h3>
            <ul>
              {entries
                .filter((entry) => entry.group === group)
                .map((entry) => (
                  <KeyRow
                    key={entry.id}
                    entry={entry}
                    own={chosen[entry.id] !== undefined}
                    waiting={waiting === entry.id}
                    onChange={() => {
                      setSaid('');
                      setWaiting(entry.id);
                    }}
                    onBack={() => setSaid(keysState.getState().giveBack(entry.id))}
                  />
                ))}
            </ul>
          </section>
        ))}
      </div>
    </Dialog>
  );
}

type KeyRowProps = {
  readonly entry: KeyEntry;
  readonly own: boolean;
  readonly waiting: boolean;
  readonly onChange: () => void;
  readonly onBack: () => void;
};

function KeyRow({ entry, own, waiting, onChange, onBack }: KeyRowProps) {
  return (
    <li data-act={entry.id} data-own={own}>
      <span>
        {entry.chords.map((chord, index) => (
          <span key={chord}>
            {index > 0 && ' or '}
            {chordWords(chord).map((word) => (
              <kbd key={word}>{word}</kbd>
            ))}
          </span>
        ))}
      </span>
      <span>{entry.label}</span>
      <button type="button" className="quiet-button" aria-pressed={waiting} onClick={onChange}>
        Change<span className="visually-hidden"> the key for: {entry.label}</span>
      </button>
      {own && (
        <button type="button" className="quiet-button" onClick={onBack}>
          Usual<span className="visually-hidden"> key for: {entry.label}</span>
        </button>
      )}
    </li>
  );
}
