import { useMemo, useState } from 'react';
import { HistoryPanel } from '../shared/HistoryPanel.tsx';
import { themeState } from '../state/themeState.ts';
import { bindCommands } from './boundCommand.ts';
import type { Command, CommandContext } from './command.ts';
import { type CommandPanel, everywhereCommands } from './everywhereCommands.ts';
import { KeySheet } from './KeySheet.tsx';
import { Palette } from './Palette.tsx';
import { useCommandKeys } from './useCommandKeys.ts';

/** A screen's open panel, and what opens another; for buttons that open the same panels as the keys. */
export const useCommandPanel = (): readonly [CommandPanel, (panel: CommandPanel) => void] =>
  useState<CommandPanel>('none');

type ScreenCommandsProps<C extends CommandContext> = {
  readonly commands: readonly Command<C>[];
  readonly context: C;
  /** The session whose history can be shown; null where there is none. */
  readonly sessionId: string | null;
  /** May keep a key to itself before any command gets it. */
  readonly keepsFirst?: (event: KeyboardEvent) => boolean;
  readonly panel: CommandPanel;
  readonly onPanel: (panel: CommandPanel) => void;
};

/** The commands of a screen by key, with the key sheet, the palette and the history that every screen has. */
export function ScreenCommands<C extends CommandContext>(props: ScreenCommandsProps<C>) {
  const { commands, context, sessionId, keepsFirst, panel, onPanel } = props;
  const bound = useMemo(
    () => [
      ...bindCommands(commands, context),
      ...bindCommands(everywhereCommands, {
        readOnly: context.readOnly,
        sessionId,
        open: onPanel,
        changeTheme: () => themeState.getState().next(),
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
      return <Palette commands={bound} onClose={close} />;
    case 'history':
      return sessionId === null ? null : <HistoryPanel sessionId={sessionId} onClose={close} />;
  }
}

const noCommands: readonly Command<CommandContext>[] = [];
const nothingToTell: CommandContext = { readOnly: false };

/** The same for a screen that has no commands of its own. */
export function EverywhereCommands(props: Pick<ScreenCommandsProps<CommandContext>, 'panel' | 'onPanel'>) {
  return <ScreenCommands commands={noCommands} context={nothingToTell} sessionId={null} {...props} />;
}
