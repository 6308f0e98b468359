import { useId, useLayoutEffect, useRef, useState } from 'react';
import { sayInbox } from '../words/sayInbox.ts';

export type PickerOption = { readonly value: string; readonly name: string };

type CellPickerProps = {
  /** What is chosen, and for how many clips. */
  readonly label: string;
  /** What was typed to open it; '' shows everything. */
  readonly typed: string;
  readonly optionsFor: (typed: string) => readonly PickerOption[];
  readonly onChoose: (value: string) => void;
  readonly onCancel: () => void;
};

/** A list over a cell that typing filters: arrow keys move, Enter picks, Escape leaves the cell as it was. */
export function CellPicker({ label, typed: first, optionsFor, onChoose, onCancel }: CellPickerProps) {
  const [typed, setTyped] = useState(first);
  const [at, setAt] = useState(0);
  const [room, setRoom] = useState<{ readonly left: number; readonly top?: number; readonly bottom?: number } | null>(
    null,
  );
  const input = useRef<HTMLInputElement>(null);
  const listId = useId();
  const options = optionsFor(typed);

  useLayoutEffect(() => {
    const element = input.current;
    if (element === null) return;
    element.focus();
    element.setSelectionRange(element.value.length, element.value.length);
    setRoom(roomFor(element.getBoundingClientRect(), window.innerHeight));
  }, []);
  const move = (by: number): void => {
    const next = Math.min(Math.max(0, at + by), Math.max(0, options.length - 1));
    setAt(next);
    document.getElementById(`${listId}-${next}`)?.scrollIntoView({ block: 'nearest' });
  };
  const choose = (option: PickerOption | undefined): void => {
    if (option !== undefined) onChoose(option.value);
  };
  const onKeyDown = (event: React.KeyboardEvent): void => {
    event.stopPropagation();
    const step = { ArrowDown: 1, ArrowUp: -1, PageDown: 8, PageUp: -8 }[event.key];
    if (step !== undefined) move(step);
    else if (event.key === 'Enter') choose(options[at]);
    else if (event.key === 'Escape') onCancel();
    else return;
    event.preventDefault();
  };
  return (
    <div className="cell-picker">
      <input
        ref={input}
        type="text"
        role="combobox"
        aria-label={label}
        aria-expanded={true}
        aria-autocomplete="list"
        aria-controls={listId}
        aria-activedescendant={options[at] === undefined ? undefined : `${listId}-${at}`}
        autoComplete="off"
        spellCheck={false}
        value={typed}
        onBlur={onCancel}
        onChange={(event) => {
          setTyped(event.target.value);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
      />
      <div
        role="listbox"
        id={listId}
        aria-label={label}
        className="picker-list cell-list"
        style={room ?? {}}
        hidden={room === null}
      >
        {options.map(({ value, name }, index) => (
          <div
            key={value}
            id={`${listId}-${index}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === at}
            onPointerDown={(event) => {
              event.preventDefault();
              onChoose(value);
            }}
          >
            {name}
          </div>
        ))}
        {options.length === 0 && <p className="soft">{sayInbox('noMatch')}</p>}
      </div>
    </div>
  );
}

/** How high the list may become; the style says the same. */
const listPx = 288;

/** Below the field while there is room, else above it. */
function roomFor({ left, top, bottom }: DOMRect, windowPx: number) {
  return windowPx - bottom >= listPx || windowPx - bottom >= top
    ? { left, top: bottom }
    : { left, bottom: windowPx - top };
}
