import { Check, ChevronUp } from 'lucide-react';
import { type KeyboardEvent, type ReactNode, useEffect, useRef, useSyncExternalStore } from 'react';
import { plain } from '../../base/figures.ts';
import { KeyHint, useShortcuts } from '../../commands/CommandButton.tsx';
import { runCommand } from '../../commands/command.ts';
import { speeds } from '../../player/playingCommands.ts';
import { sayStage } from '../../words/sayStage.ts';
import { openPictureMenu } from '../commands/arranging.ts';
import { type MenuLine, pictureMenu } from '../commands/pictureMenu.ts';
import { useAvailability, useReview, useReviewDesk } from '../commands/ReviewDeskProvider.tsx';
import { menuState } from '../state/panelState.ts';
import { playerState } from '../state/playerState.ts';

const linesIn = (menu: HTMLElement | null): readonly HTMLElement[] => [
  ...(menu?.querySelectorAll<HTMLElement>('[role^=menuitem]') ?? []),
];

/** Where an arrow, Home or End takes the focus in a list; null for any other key. */
function lineAfter(key: string, at: number, count: number): number | null {
  if (key === 'ArrowDown') return (at + 1) % count;
  if (key === 'ArrowUp') return (at - 1 + count) % count;
  if (key === 'Home') return 0;
  return key === 'End' ? count - 1 : null;
}

/** The button for everything rarely asked of the picture, and the menu that it opens. */
export function PictureMenu() {
  const open = menuState((state) => state.open);
  const around = useRef<HTMLDivElement>(null);
  const menu = useRef<HTMLDivElement>(null);
  const before = useRef<Element | null>(null);
  const { readOnly } = useReview();
  const shortcuts = useShortcuts(openPictureMenu);
  const parts = pictureMenu
    .map(({ title, lines }) => ({
      title,
      lines: lines.filter(({ command }) => !readOnly || command.readOnly === 'allowed'),
    }))
    .filter(({ lines }) => lines.length > 0);
  useEffect(() => {
    if (!open) return;
    before.current = document.activeElement;
    linesIn(menu.current)[0]?.focus();
    const onPointerDown = ({ target }: PointerEvent): void => {
      if (target instanceof Node && around.current?.contains(target) !== true) menuState.setState({ open: false });
    };
    window.addEventListener('pointerdown', onPointerDown);
    return () => window.removeEventListener('pointerdown', onPointerDown);
  }, [open]);
  useEffect(() => () => menuState.setState({ open: false }), []);

  const close = (): void => {
    menuState.setState({ open: false });
    if (before.current instanceof HTMLElement && before.current !== document.body) before.current.focus();
    else (document.activeElement as HTMLElement | null)?.blur();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.shiftKey || event.ctrlKey || event.metaKey || event.altKey) return;
    const lines = linesIn(menu.current);
    const to = lineAfter(
      event.key,
      lines.findIndex((line) => line.matches(':focus')),
      lines.length,
    );
    if (to !== null) lines[to]?.focus();
    else if (event.key === 'Escape') close();
    else if (event.key === 'Tab') return menuState.setState({ open: false });
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div className="picture-menu" ref={around}>
      <button
        type="button"
        aria-haspopup="menu"
        aria-expanded={open}
        aria-keyshortcuts={shortcuts}
        onClick={() => (open ? close() : menuState.setState({ open: true }))}
      >
        {sayStage('more')} <ChevronUp aria-hidden="true" /> <KeyHint command={openPictureMenu} />
      </button>
      {open && (
        <div ref={menu} className="menu" role="menu" aria-label={sayStage('moreOfPicture')} onKeyDown={onKeyDown}>
          <div className="menu-columns">
            {parts.map(({ title, lines }) => (
              <MenuPart key={title} title={sayStage(title)}>
                {lines.map((line) => (
                  <Line key={line.command.id} line={line} onDone={close} />
                ))}
              </MenuPart>
            ))}
            <SpeedPart />
          </div>
        </div>
      )}
    </div>
  );
}

function MenuPart({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a menu may hold groups, and no fieldset
    <div className="menu-part" role="group" aria-label={title}>
      <span className="menu-title" aria-hidden="true">
        {title}
      </span>
      {children}
    </div>
  );
}

/** A command of the menu. What switches something, or is pressed several times on end, leaves the menu open. */
function Line({ line, onDone }: { readonly line: MenuLine; readonly onDone: () => void }) {
  const { command, isOn, whileOn, again } = line;
  const { context, subscribe } = useReviewDesk();
  const availability = useAvailability(command);
  const on = useSyncExternalStore(subscribe, () => isOn?.(context) === true);
  const shortcuts = useShortcuts(command);
  const reason = availability.can ? undefined : availability.because;
  const run = (): void => {
    if ((isOn === undefined && again === undefined) || whileOn !== undefined) onDone();
    if (on && whileOn !== undefined) whileOn(context);
    else runCommand(command, context);
  };
  return (
    <button
      type="button"
      {...(isOn === undefined ? { role: 'menuitem' } : { role: 'menuitemcheckbox', 'aria-checked': on })}
      aria-disabled={reason === undefined ? undefined : true}
      aria-description={reason}
      aria-keyshortcuts={shortcuts}
      title={reason}
      tabIndex={-1}
      onClick={run}
    >
      <span className="menu-mark" aria-hidden="true">
        {on && <Check />}
      </span>
      <span className="menu-words">{command.label()}</span>
      {shortcuts !== undefined && <KeyHint command={command} />}
    </button>
  );
}

/** How fast the clip plays, to choose from. */
function SpeedPart() {
  const { setSpeed } = useReview();
  const speed = playerState((state) => state.speed);
  return (
    <MenuPart title={sayStage('speed')}>
      <span className="menu-speeds">
        {speeds.map((known) => (
          <button
            key={known}
            type="button"
            role="menuitemradio"
            aria-checked={known === speed}
            tabIndex={-1}
            onClick={() => setSpeed(known)}
          >
            {sayStage('times', { factor: plain(known) })}
          </button>
        ))}
      </span>
    </MenuPart>
  );
}
