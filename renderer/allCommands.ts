import type { CommandFace } from './commands/command.ts';
import { everywhereCommands } from './commands/everywhereCommands.ts';
import { compareCommands } from './compare/compareCommands.ts';
import { deskCommands } from './desk/deskCommands.ts';
import { inboxCommands } from './inbox/inboxCommands.ts';
import { letterCommands } from './letter/letterCommands.ts';

import { reviewCommands } from './review/commands/reviewCommands.ts';

/** The commands of every screen; screens share some of them. */
export const allCommands: readonly CommandFace[] = [
  ...reviewCommands,
  ...letterCommands,
  ...inboxCommands,
  ...deskCommands,
  ...compareCommands,
  ...everywhereCommands,
];
