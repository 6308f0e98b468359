import type { Command, CommandContext } from './command.ts';
import { named } from './named.ts';

/** What a screen tells the command that goes on to what is next to do. */
export type NightContext = CommandContext & {
  /** Does the next step of what is on screen, or opens the next session due once nothing of it is left. */
  readonly goOn: () => void | Promise<void>;
};

/** Goes on, one step a press: to what is left to judge, to the letter, to the handover, to the next session due. */
export const nextToDo: Command<NightContext> = {
  ...named('nextSession'),
  group: 'anywhere',
  keys: ['Shift+N'],
  readOnly: 'allowed',
  run: ({ goOn }) => goOn(),
};
