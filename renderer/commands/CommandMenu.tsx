import { type KeyboardEvent, type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { KeyHint, useShortcuts } from './CommandButton.tsx';
import { availabilityOf, type Command, type CommandContext, runCommand } from './command.ts';

type CommandMenuProps<C extends CommandContext> = {
  /** What the menu is of: "More: Mira Holt". */
  readonly label: string;
  readonly commands: readonly Command<C>[];
  readonly context: C;
  /** On the button, such as an icon. */
  readonly children: ReactNode;
};

const linesIn = (menu: HTMLElement | null): readonly HTMLElement[] => [
  ...(menu?.querySelectorAll<HTMLElement>('[role=menuitem]') ?? []),
];

const steps: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowDown: (at, count) => (at + 1) % count,
  ArrowUp: (at, count) => (at - 1 + count) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

/** A button that opens commands as a menu, on the window's own layer so that no list cuts it off. */
export function CommandMenu<C extends CommandContext>({ label, commands, context, children }: CommandMenuProps<C>) {
  const [open, setOpen] = useState(false);
  const around = useRef<HTMLSpanElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const menu = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (open && menu.current !== null && button.current !== null) place(menu.current, button.current);
  }, [open]);
  useEffect(() => {
    if (!open) return;
    linesIn(menu.current)[0]?.focus();
    const leave = (): void => setOpen(false);
    const onPointerDown = ({ target }: PointerEvent): void => {
      if (target instanceof Node && around.current?.contains(target) !== true) leave();
    };
    window.addEventListener('pointerdown', onPointerDown);
    window.addEventListener('resize', leave);
    return () => {
      window.removeEventListener('pointerdown', onPointerDown);
      window.removeEventListener('resize', leave);
    };
  }, [open]);
  const close = (): void => {
    setOpen(false);
    button.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.shiftKey || event.ctrlKey || event.metaKey || event.altKey) return;
    const lines = linesIn(menu.current);
    const step = steps[event.key];
    if (step !== undefined)
      lines[
        step(
          lines.findIndex((line) => line.matches(':focus')),
          lines.length,
        )
      ]?.focus();
    else if (event.key === 'Escape') close();
    else if (event.key === 'Tab') return setOpen(false);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <span className="command-menu" ref={around}>
      <button
        ref={button}
        type="button"
        className="icon-button"
        aria-haspopup="menu"
        aria-expanded={open}
        aria-label={label}
        title={label}
        onClick={() => setOpen(!open)}
      >
        {children}
      </button>
      {open && (
        <div ref={menu} className="menu menu-fixed" role="menu" aria-label={label} onKeyDown={onKeyDown}>
          <div className="menu-part" role="none">
            {commands.map((command) => (
              <Line
                key={command.id}
                command={command}
                context={context}
                onRun={() => {
                  close();
                  runCommand(command, context);
                }}
              />
            ))}
          </div>
        </div>
      )}
    </span>
  );
}

type LineProps<C extends CommandContext> = {
  readonly command: Command<C>;
  readonly context: C;
  readonly onRun: () => void;
};

function Line<C extends CommandContext>({ command, context, onRun }: LineProps<C>) {
  const availability = availabilityOf(command, context);
  const reason = availability.can ? undefined : availability.because;
  const shortcuts = useShortcuts(command);
  return (
    <button
      type="button"
      role="menuitem"
      aria-disabled={reason === undefined ? undefined : true}
      aria-description={reason}
      aria-keyshortcuts={shortcuts}
      title={reason}
      tabIndex={-1}
      onClick={onRun}
    >
      <span className="menu-words">{command.button?.() ?? command.label()}</span>
      <KeyHint command={command} />
    </button>
  );
}

const gapPx = 4;

/** Below its button where there is room, else above; never beyond the window's edges. */
function place(menu: HTMLElement, button: HTMLElement): void {
  const at = button.getBoundingClientRect();
  const { width, height } = menu.getBoundingClientRect();
  const below = at.bottom + gapPx;
  const top = below + height > window.innerHeight ? Math.max(gapPx, at.top - gapPx - height) : below;
  const left = Math.min(at.left, window.innerWidth - width - gapPx);
  menu.style.top = `${top}px`;
  menu.style.left = `${Math.max(gapPx, left)}px`;
}
