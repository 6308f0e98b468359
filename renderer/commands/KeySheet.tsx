import { Fragment, useEffect, useState } from 'react';
import { Dialog } from '../base/Dialog.tsx';
import { sayCommandGroups } from '../words/sayCommandGroups.ts';
import { sayCommandPanels } from '../words/sayCommandPanels.ts';
import { type CommandFace, commandGroups, registeredCommands } from './command.ts';
import { chordOfPress, chordWords, keysOf } from './keys.ts';
import { keysState } from './keysState.ts';

/** The keys of every command, by group; each can be changed. */
export function KeySheet({ onClose }: { readonly onClose: () => void }) {
  const chosen = keysState((state) => state.chosen);
  const [waiting, setWaiting] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const commands = registeredCommands();
  const waitsFor = commands.find(({ id }) => id === waiting);
  useEffect(() => {
    if (waiting === null) return;
    const onKeyDown = (event: KeyboardEvent): void => {
      event.preventDefault();
      event.stopPropagation();
      const chord = event.key === 'Escape' ? 'Escape' : chordOfPress(event);
      if (chord === null) return;
      setWaiting(null);
      setSaid(chord === 'Escape' ? '' : keysState.getState().choose(waiting, chord));
    };
    window.addEventListener('keydown', onKeyDown, true);
    return () => window.removeEventListener('keydown', onKeyDown, true);
  }, [waiting]);
  return (
    <Dialog title={sayCommandPanels('keys')} onClose={onClose} size="wide">
      <p className="key-sheet-head">
        <span role="status">
          {waitsFor === undefined ? said : sayCommandPanels('pressKey', { action: waitsFor.label() })}
        </span>
        <button
          type="button"
          disabled={Object.keys(chosen).length === 0}
          onClick={() => {
            keysState.getState().resetAll();
            setSaid(sayCommandPanels('usualAgain'));
          }}
        >
          {sayCommandPanels('usualKeys')}
        </button>
      </p>
      <div className="key-sheet">
        {commandGroups.map((group) => (
          <section key={group}>
            <h3>{sayCommandGroups(group)}</h3>
            <ul>
              {commands
                .filter((command) => command.group === group)
                .map((command) => (
                  <KeyRow
                    key={command.id}
                    command={command}
                    keys={keysOf(chosen, command)}
                    own={chosen[command.id] !== undefined}
                    waiting={waiting === command.id}
                    onChange={() => {
                      setSaid('');
                      setWaiting(command.id);
                    }}
                    onBack={() => setSaid(keysState.getState().reset(command.id))}
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
  readonly command: CommandFace;
  readonly keys: readonly string[];
  readonly own: boolean;
  readonly waiting: boolean;
  readonly onChange: () => void;
  readonly onBack: () => void;
};

function KeyRow({ command, keys, own, waiting, onChange, onBack }: KeyRowProps) {
  const action = command.label();
  return (
    <li data-command={command.id} data-own={own}>
      <span>{action}</span>
      <span className="key-sheet-keys">
        {keys.map((chord, index) => (
          <Fragment key={chord}>
            {index > 0 && sayCommandPanels('or')}
            <span className="key-sheet-chord">
              {chordWords(chord).map((word) => (
                <kbd key={word}>{word}</kbd>
              ))}
            </span>
          </Fragment>
        ))}
      </span>
      <button
        type="button"
        className="quiet-button"
        aria-label={sayCommandPanels('changeKey', { action })}
        aria-pressed={waiting}
        onClick={onChange}
      >
        {sayCommandPanels('change')}
      </button>
      {own && (
        <button
          type="button"
          className="quiet-button"
          aria-label={sayCommandPanels('usualKey', { action })}
          onClick={onBack}
        >
          {sayCommandPanels('usual')}
        </button>
      )}
    </li>
  );
}
