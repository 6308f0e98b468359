import type { InboxFile } from '../../electron/contract/inbox.ts';
import { available, type Command, type CommandContext, unavailable } from '../commands/command.ts';
import { named } from '../commands/named.ts';
import { takeFiles, takeFolder } from '../importing/takeIn.ts';
import { sayReasons } from '../words/sayReasons.ts';
import { bringAllIn, readyToBring } from './bringIn.ts';

/** What the inbox tells its commands. */
export type InboxContext = CommandContext & { readonly files: readonly InboxFile[] };

export const bringIn: Command<InboxContext> = {
  ...named('bringIn'),
  group: 'anywhere',
  keys: ['Mod+Enter'],
  readOnly: 'allowed',
  when: ({ files }) => (readyToBring(files).length === 0 ? unavailable(sayReasons('nothingReady')) : available),
  run: ({ files }) => bringAllIn(files),
};

export const addFiles: Command<InboxContext> = {
  ...named('addFiles'),
  group: 'anywhere',
  keys: ['Mod+O'],
  readOnly: 'allowed',
  run: takeFiles,
};

export const addFolder: Command<InboxContext> = {
  ...named('addFolder'),
  group: 'anywhere',
  keys: ['Mod+Shift+O'],
  readOnly: 'allowed',
  run: takeFolder,
};

/** The commands of the inbox. */
export const inboxCommands: readonly Command<InboxContext>[] = [bringIn, addFiles, addFolder];
