import { useEffect, useMemo, useState } from 'react';
import { languages } from '../../engine/language/language.ts';
import { HistoryPanel } from '../shared/HistoryPanel.tsx';
import { SettingsDialog } from '../shared/settings/SettingsDialog.tsx';
import { chooseLanguage } from '../state/chooseLanguage.ts';
import { themeState } from '../state/preferences.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { type BoundCommand, bindCommands, type Command, type CommandContext } from './command.ts';
import { type CommandPanel, everywhereCommands } from './everywhereCommands.ts';
import { KeySheet } from './KeySheet.tsx';
import { isChord, keysOf } from './keys.ts';
import { keysState } from './keysState.ts';
import { Palette } from './Palette.tsx';

/** The desk in the next of its languages. */
function changeLanguage(): void {
  const { language } = deskLanguage.getState();
  chooseLanguage(languages[(languages.indexOf(language) + 1) % languages.length] ?? language);
}

/** A screen's open panel, and what opens another; for buttons that open the same panels as the keys. */
export const useCommandPanel = (): readonly [CommandPanel, (panel: CommandPanel) => void] =>
  useState<CommandPanel>('none');

type ScreenCommandsProps<C extends CommandContext> = {
  readonly commands: readonly Command<C>[];
  readonly context: C;
  /** Commands that the palette offers for what is typed into it alone. */
  readonly forTyped?: (typed: string, context: C) => readonly Command<C>[];
  /** The session whose history can be shown; null where there is none. */
  readonly sessionId: string | null;
  /** May keep a key to itself before any command gets it. */
  readonly keepsFirst?: (event: KeyboardEvent) => boolean;
  readonly panel: CommandPanel;
  readonly onPanel: (panel: CommandPanel) => void;
};

/** The commands of a screen by key, with the key sheet, the palette and the history that every screen has. */
export function ScreenCommands<C extends CommandContext>(props: ScreenCommandsProps<C>) {
  const { commands, context, forTyped, sessionId, keepsFirst, panel, onPanel } = props;
  const bound = useMemo(
    () => [
      ...bindCommands(commands, context),
      ...bindCommands(everywhereCommands, {
        readOnly: context.readOnly,
        sessionId,
        open: onPanel,
        changeTheme: () => themeState.getState().next(),
        changeLanguage,
      }),
    ],
    [commands, context, sessionId, onPanel],
  );
  useCommandKeys(bound, keepsFirst);
  const close = (): void => onPanel('none');
  switch (panel) {
    case 'none':
      return null;
    case 'keySheet':
      return <KeySheet onClose={close} />;
    case 'palette':
      return (
        <Palette
          commands={bound}
          forTyped={(typed) => bindCommands(forTyped?.(typed, context) ?? [], context)}
          onClose={close}
        />
      );
    case 'history':
      return sessionId === null ? null : <HistoryPanel sessionId={sessionId} onClose={close} />;
    case 'settings':
      return <SettingsDialog onClose={close} />;
  }
}

const noCommands: readonly Command<CommandContext>[] = [];
const nothingToTell: CommandContext = { readOnly: false };

/** The same for a screen that has no commands of its own. */
export function EverywhereCommands(props: Pick<ScreenCommandsProps<CommandContext>, 'panel' | 'onPanel'>) {
  return <ScreenCommands commands={noCommands} context={nothingToTell} sessionId={null} {...props} />;
}

const typing = 'textarea, input:not([type=radio], [type=checkbox], [type=range]), [contenteditable=true]';
const choosing = 'select, input[type=radio], input[type=range]';
const pressing = 'button, a[href], summary, input[type=checkbox]';

/** Whether a key is text for the focused control, or of a dialog. */
const isTextFor = (target: Element): boolean =>
  target.closest('dialog[open]') !== null || target.closest(typing) !== null;

/** Whether the focused control has its own use for a key. */
function isTakenByFocus(event: KeyboardEvent): boolean {
  const target = event.target;
  if (!(target instanceof Element)) return false;
  if (isTextFor(target)) return true;
  if (target.closest(choosing) !== null)
    return !event.ctrlKey && !event.metaKey && !event.shiftKey && event.key !== '?';
  if (target.closest(pressing) !== null) return event.key === 'Enter' || event.key === ' ';
  return false;
}

/** The command that a key press asks for, with the keys as this person has them. */
const commandOfPress = (
  commands: readonly BoundCommand[],
  event: Parameters<typeof isChord>[0],
): BoundCommand | undefined => {
  const { chosen } = keysState.getState();
  return commands.find(({ face }) => keysOf(chosen, face).some((chord) => isChord(event, chord)));
};

const keepsNothing = (): boolean => false;

/**
 * Runs commands when their keys are pressed. Keys that the focused control needs stay with it, and `keepsFirst` may
 * keep a key to itself, unless it is text for the focused control.
 */
function useCommandKeys(
  commands: readonly BoundCommand[],
  keepsFirst: (event: KeyboardEvent) => boolean = keepsNothing,
): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || event.isComposing) return;
      const isText = event.target instanceof Element && isTextFor(event.target);
      if (!isText && keepsFirst(event)) return event.preventDefault();
      if (isTakenByFocus(event)) return;
      const command = commandOfPress(commands, event);
      if (command === undefined) return;
      event.preventDefault();
      command.runByKey(event.repeat ? 'held' : 'pressed');
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [commands, keepsFirst]);
}
