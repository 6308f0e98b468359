import type { ReactNode } from 'react';
import type { Availability, CommandFace } from './command.ts';
import { keyWords, spokenKeys } from './keys.ts';
import { keysState } from './keysState.ts';

export type CommandButtonProps = {
  readonly command: CommandFace;
  readonly availability: Availability;
  readonly onRun: () => void;
  /** Stands before the words, such as an icon. */
  readonly children?: ReactNode;
  /** In place of the command's own words. */
  readonly words?: string;
  /** What the button is called where its words need what stands around them to be understood. */
  readonly name?: string;
  /** `icon`: the words are its name alone; `words`: without the key. */
  readonly shows?: 'key' | 'words' | 'icon';
  readonly className?: string;
  readonly pressed?: boolean;
  readonly expanded?: boolean;
  readonly title?: string;
  readonly severity?: string;
};

/**
 * The button of a command. Where it can't run now it stays reachable and says why, as its key does; pressing it puts
 * the reason in the status line.
 */
export function CommandButton(props: CommandButtonProps) {
  const { command, availability, onRun, children, shows = 'key' } = props;
  const words = props.words ?? command.button?.() ?? command.label();
  const reason = availability.can ? undefined : availability.because;
  const shortcuts = useShortcuts(command);
  return (
    <button
      type="button"
      className={props.className}
      aria-label={props.name ?? (shows === 'icon' ? words : undefined)}
      aria-pressed={props.pressed}
      aria-expanded={props.expanded}
      aria-disabled={reason === undefined ? undefined : true}
      aria-description={reason}
      aria-keyshortcuts={shortcuts}
      title={reason ?? props.title ?? (shows === 'icon' ? words : undefined)}
      data-severity={props.severity}
      onClick={onRun}
    >
      {children}
      {shows !== 'icon' && <> {words}</>}
      {shows === 'key' && (
        <>
          {' '}
          <KeyHint command={command} />
        </>
      )}
    </button>
  );
}

/** The keys of a command for the `aria-keyshortcuts` of the control that runs it. */
export const useShortcuts = (command: CommandFace): string | undefined =>
  keysState((state) => spokenKeys(state.chosen, command));

/** The key of a command, small, beside its label. No part of the control's name: `aria-keyshortcuts` says it to screen readers. */
export function KeyHint({ command }: { readonly command: CommandFace }) {
  return (
    <kbd className="key-hint" aria-hidden="true">
      {keysState((state) => keyWords(state.chosen, command))}
    </kbd>
  );
}
