import { useId, useState } from 'react';
import { Dialog } from '../base/Dialog.tsx';
import { sayCommandGroups } from '../words/sayCommandGroups.ts';
import { sayCommandPanels } from '../words/sayCommandPanels.ts';
import type { BoundCommand } from './command.ts';
import { keyWords } from './keys.ts';
import { keysState } from './keysState.ts';

const within = (length: number, index: number): number => Math.min(Math.max(0, index), Math.max(0, length - 1));

type PaletteProps = {
  readonly commands: readonly BoundCommand[];
  /** Further commands that answer what is typed; they come last. */
  readonly forTyped: (typed: string) => readonly BoundCommand[];
  readonly onClose: () => void;
};

/** Every command of the screen by its name: typing filters, Enter runs it. What can't be done now says why. */
export function Palette({ commands, forTyped, onClose }: PaletteProps) {
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const listId = useId();
  const named = filterCommands(
    commands.filter(({ face }) => face.palette !== 'unlisted'),
    typed,
  );
  const listed = [...named, ...forTyped(typed)];
  const run = (command: BoundCommand | undefined): void => {
    if (command === undefined) return;
    onClose();
    command.run('pressed');
  };
  return (
    <Dialog title={sayCommandPanels('findAction')} onClose={onClose}>
      <form
        className="palette"
        onSubmit={(event) => {
          event.preventDefault();
          run(listed[at]);
        }}
      >
        <input
          type="text"
          role="combobox"
          aria-label={sayCommandPanels('typeAction')}
          placeholder={sayCommandPanels('typeAction')}
          aria-expanded="true"
          aria-controls={listId}
          aria-activedescendant={listed[at] === undefined ? undefined : `${listId}-${at}`}
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
            setAt(within(listed.length, next));
            document.getElementById(`${listId}-${within(listed.length, next)}`)?.scrollIntoView({ block: 'nearest' });
          }}
        />
        <div role="listbox" id={listId} aria-label={sayCommandPanels('actions')} className="palette-list">
          {listed.map((command, index) => (
            <PaletteOption
              key={command.face.id}
              id={`${listId}-${index}`}
              command={command}
              selected={index === at}
              onRun={() => run(command)}
            />
          ))}
          {listed.length === 0 && <p className="soft">{sayCommandPanels('noAction')}</p>}
        </div>
      </form>
    </Dialog>
  );
}

type PaletteOptionProps = {
  readonly id: string;
  readonly command: BoundCommand;
  readonly selected: boolean;
  readonly onRun: () => void;
};

function PaletteOption({ id, command, selected, onRun }: PaletteOptionProps) {
  const chosen = keysState((state) => state.chosen);
  const availability = command.availability();
  const key = keyWords(chosen, command.face);
  return (
    <div
      id={id}
      role="option"
      tabIndex={-1}
      aria-selected={selected}
      aria-disabled={!availability.can}
      onPointerDown={(event) => {
        event.preventDefault();
        onRun();
      }}
    >
      <span>
        {command.face.label()}
        {!availability.can && <span className="palette-reason">{availability.because}</span>}
      </span>
      {key !== '' && <kbd>{key}</kbd>}
    </div>
  );
}

type Listed = { readonly face: Pick<BoundCommand['face'], 'label' | 'otherWords' | 'group'> };

/** Commands whose label, group or other words hold every typed word: those whose label begins with the first, then those whose label holds all. */
export function filterCommands<C extends Listed>(commands: readonly C[], typed: string): readonly C[] {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const [first] = words;
  if (first === undefined) return commands;
  const holdsAll = (text: string): boolean => words.every((word) => text.includes(word));
  const ranked = commands.flatMap((command) => {
    const { label, group, otherWords } = command.face;
    const [name, others] = [label().toLowerCase(), `${sayCommandGroups(group)} ${otherWords?.() ?? ''}`.toLowerCase()];
    if (!holdsAll(`${name} ${others}`)) return [];
    return [{ command, rank: name.startsWith(first) ? 0 : holdsAll(name) ? 1 : 2 }];
  });
  return ranked.toSorted((a, b) => a.rank - b.rank).map(({ command }) => command);
}
