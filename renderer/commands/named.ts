import { type CommandButtonId, commandButtons } from '../../engine/wording/english/desk/commandButtons.ts';
import type { CommandId } from '../../engine/wording/english/desk/commands.ts';
import { sayCommandButtons } from '../words/sayCommandButtons.ts';
import { sayCommands } from '../words/sayCommands.ts';
import { sayCommandWords } from '../words/sayCommandWords.ts';
import type { CommandFace } from './command.ts';

const hasButton = (id: CommandId): id is CommandId & CommandButtonId => Object.hasOwn(commandButtons, id);

/** How a command is called in the desk's language: what it does, the words on its button, and others to find it by. */
export const named = (id: CommandId): Pick<CommandFace, 'id' | 'label' | 'button' | 'otherWords'> => ({
  id,
  label: () => sayCommands(id),
  otherWords: () => sayCommandWords(id),
  ...(hasButton(id) && { button: () => sayCommandButtons(id) }),
});
