import { useEffect, useId, useMemo, useRef, useState } from 'react';
import { create } from 'zustand';
import type { Exercise, Fault } from '../../../engine/exercises/exercise.ts';
import type { Flag } from '../../../engine/review/review.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { runCommand } from '../../commands/command.ts';
import { isChord, keysOf } from '../../commands/keys.ts';
import { keysState } from '../../commands/keysState.ts';
import { undo } from '../../commands/sessionCommands.ts';
import { cursorState } from '../../state/cursorState.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { saySeverity } from '../../words/saySeverity.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';

type FaultPickerProps = { readonly flag: Flag; readonly exercise: Exercise; readonly criterionName: string };

const close = (): void => {
  cursorState.getState().nameFault(null);
  focusCursorCell();
};

/** Whether the undo key was pressed: while nothing is typed it means the flag that is about to get its name. */
const isUndo = (event: React.KeyboardEvent): boolean =>
  keysOf(keysState.getState().chosen, undo).some((chord) => isChord(event, chord));

const within = (length: number, index: number): number => Math.min(Math.max(0, index), length - 1);

/** Names the fault of a flag that is already saved: typing filters, Enter picks, Escape leaves it without a name, undo takes it back. */
export function FaultPicker({ flag, exercise, criterionName }: FaultPickerProps) {
  const context = useReview();
  const [typed, setTyped] = useState(context.typing.release);
  const [at, setAt] = useState(0);
  const input = useRef<HTMLInputElement>(null);
  const listId = useId();
  const faults = useMemo(
    () => filterFaults(exercise.faults, flag.criterion, typed, recentFaults.getState().ids),
    [exercise, flag.criterion, typed],
  );
  useEffect(() => {
    input.current?.focus();
    input.current?.closest('section')?.scrollIntoView({ block: 'nearest' });
  }, []);

  const pick = async (fault: Fault | undefined): Promise<void> => {
    if (fault === undefined) return;
    close();
    recentFaults.getState().used(fault.id);
    await mutate('flags.update', { flagId: flag.id, change: { fault: fault.id } });
  };
  const onKeyDown = (event: React.KeyboardEvent): void => {
    const moves: Readonly<Record<string, number>> = { ArrowDown: at + 1, ArrowUp: at - 1 };
    const next = moves[event.key];
    if (next !== undefined) setAt(within(faults.length, next));
    else if (event.key === 'Enter') void pick(faults[at]);
    else if (event.key === 'Escape') close();
    else if (typed === '' && isUndo(event)) {
      close();
      runCommand(undo, context);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <section className="fault-picker" aria-label={sayFlags('nameFault')}>
      <header>
        <Strokes severity={flag.severity} named="elsewhere" />
        <strong>{saySeverity(`${flag.severity ?? 'note'}Title`)}</strong>
        <span className="soft">{sayFlags('whichFault', { criterion: criterionName })}</span>
      </header>
      <input
        ref={input}
        type="text"
        role="combobox"
        aria-label={sayFlags('filterFaults')}
        aria-expanded="true"
        aria-controls={listId}
        aria-activedescendant={faults[at] === undefined ? undefined : `${listId}-${at}`}
        autoComplete="off"
        spellCheck={false}
        placeholder={sayFlags('typeToFilter')}
        value={typed}
        onChange={(event) => {
          setTyped(event.target.value);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
        onBlur={(event) => {
          if (event.relatedTarget !== null) cursorState.getState().nameFault(null);
        }}
      />
      <div
        className="fault-list"
        role="listbox"
        id={listId}
        aria-label={sayFlags('faultsOf', { criterion: criterionName })}
      >
        {faults.map((fault, index) => (
          <div
            key={fault.id}
            id={`${listId}-${index}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === at}
            data-fault={fault.id}
            onPointerDown={(event) => {
              event.preventDefault();
              void pick(fault);
            }}
          >
            <span className="fault-name">{fault.name}</span>
            <Strokes severity={fault.usualSeverity} />
            <span className="soft fault-seen">{fault.seen}</span>
          </div>
        ))}
        {faults.length === 0 && <p className="soft">{sayFlags('noFaultMatches')}</p>}
      </div>
      <p className="hint soft">{sayFlags('pickHint')}</p>
    </section>
  );
}

/** Puts the focus back on the cell the cursor is on, once the page has been drawn again. */
const focusCursorCell = (): void => {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.scorecard [data-cursor=true]')?.focus());
};

/** How well a fault answers what was typed: lower is better, null = not at all. */
function rank(fault: Fault, words: readonly string[]): number | null {
  const name = fault.name.toLowerCase();
  const nameWords = name.split(/[^\p{L}\p{N}]+/u);
  let worst = 0;
  for (const word of words) {
    if (name.startsWith(word)) continue;
    if (nameWords.some((part) => part.startsWith(word))) worst = Math.max(worst, 1);
    else if (name.includes(word)) worst = Math.max(worst, 2);
    else if (fault.seen.toLowerCase().includes(word)) worst = Math.max(worst, 3);
    else return null;
  }
  return worst;
}

/**
 * A criterion's faults that hold every typed word, best match first; all of them while nothing is typed. Among equal
 * matches those used last come first.
 */
export function filterFaults(
  faults: readonly Fault[],
  criterion: string,
  typed: string,
  recent: readonly string[] = [],
): readonly Fault[] {
  const lastUsed = (id: string): number => (recent.includes(id) ? recent.indexOf(id) : recent.length);
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  return faults
    .filter((fault) => fault.criterion === criterion)
    .map((fault, order) => ({ fault, order, rank: rank(fault, words) }))
    .filter((found): found is { fault: Fault; order: number; rank: number } => found.rank !== null)
    .sort((a, b) => a.rank - b.rank || lastUsed(a.fault.id) - lastUsed(b.fault.id) || a.order - b.order)
    .map(({ fault }) => fault);
}

type RecentFaults = {
  /** Fault ids, the last used first. */
  readonly ids: readonly string[];
  readonly used: (faultId: string) => void;
};

const most = 40;

/** The faults that were named recently; they come first in the list. */
export const recentFaults = create<RecentFaults>()((set) => ({
  ids: [],
  used: (faultId) => set(({ ids }) => ({ ids: [faultId, ...ids.filter((id) => id !== faultId)].slice(0, most) })),
}));
