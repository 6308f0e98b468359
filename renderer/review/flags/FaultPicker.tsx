import { useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Exercise, Fault } from '../../../engine/exercises/exercise.ts';
import type { Flag } from '../../../engine/review/review.ts';
import { capitalized } from '../../base/capitalized.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { cursorState } from '../../state/cursorState.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { filterFaults, recentFaults } from './faultFilter.ts';

type FaultPickerProps = { readonly flag: Flag; readonly exercise: Exercise; readonly criterionName: string };

const close = (): void => {
  cursorState.getState().nameFault(null);
  focusCursorCell();
};

const within = (length: number, index: number): number => Math.min(Math.max(0, index), length - 1);

/** Names the fault of a flag that is already saved: typing filters, Enter picks, Escape leaves it without a name. */
export function FaultPicker({ flag, exercise, criterionName }: FaultPickerProps) {
  const { typing } = useReview();
  const [typed, setTyped] = useState(typing.release);
  const [at, setAt] = useState(0);
  const input = useRef<HTMLInputElement>(null);
  const listId = useId();
  const faults = useMemo(
    () => filterFaults(exercise.faults, flag.criterion, typed, recentFaults.getState().ids),
    [exercise, flag.criterion, typed],
  );
  useEffect(() => {
    input.current?.focus();
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
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <section className="fault-picker" aria-label="Name the fault">
      <header>
        <Strokes weight={flag.weight} named="elsewhere" />
        <strong>{capitalized(flag.weight)}</strong>
        <span className="soft">{criterionName}: which fault?</span>
      </header>
      <input
        ref={input}
        type="text"
        role="combobox"
        aria-label="Type to filter the faults"
        aria-expanded="true"
        aria-controls={listId}
        aria-activedescendant={faults[at] === undefined ? undefined : `${listId}-${at}`}
        autoComplete="off"
        spellCheck={false}
        placeholder="Type to filter"
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
      <div className="fault-list" role="listbox" id={listId} aria-label={`Faults: ${criterionName}`}>
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
            <Strokes weight={fault.usualWeight} />
            <span className="soft fault-seen">{fault.seen}</span>
          </div>
        ))}
        {faults.length === 0 && (
          <p className="soft">No fault of this criterion matches. Escape keeps the flag without one.</p>
        )}
      </div>
      <p className="hint soft">Enter picks · Escape keeps the flag without a named fault</p>
    </section>
  );
}

/** Puts the focus back on the cell the cursor is on, once the page has been drawn again. */
export const focusCursorCell = (): void => {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.scorecard [data-cursor=true]')?.focus());
};
