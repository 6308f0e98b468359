import { mutate } from '../bridge/mutate.ts';
import { available, type Command, unavailable } from '../commands/command.ts';
import { named } from '../commands/named.ts';
import { nextToDo } from '../commands/nightCommands.ts';
import { handOver, historyCommands } from '../commands/sessionCommands.ts';
import { letterState } from '../state/letterState.ts';
import { sayReasons } from '../words/sayReasons.ts';
import type { LetterContext } from './letterContext.ts';
import { letterDesk } from './letterDesk.ts';
import { paragraphCommands } from './paragraphCommands.ts';

/** Keeps the letter as it is now as the next version that was sent. */
export async function sendLetter(sessionId: string): Promise<void> {
  letterDesk.setState({ asking: 'nothing' });
  if ((await mutate('letters.send', { sessionId })) !== null) await letterState.getState().refresh(sessionId);
}

/** Asks first where nothing has changed since the version before. */
export const markSent: Command<LetterContext> = {
  ...named('markSent'),
  group: 'anywhere',
  keys: ['Shift+S'],
  readOnly: 'refused',
  when: ({ lines }) => (lines === null || lines.length === 0 ? unavailable(sayReasons('letterNotShown')) : available),
  run: async (context) => {
    await context.saveDrafts();
    if (context.sentAlready) letterDesk.setState({ asking: 'sendAgain' });
    else await sendLetter(context.sessionId);
  },
};

export const saveDocument: Command<LetterContext> = {
  ...named('saveDocument'),
  group: 'anywhere',
  keys: ['Mod+S'],
  readOnly: 'allowed',
  run: ({ saveDocument: save }) => save(),
};

export const phrases: Command<LetterContext> = {
  ...named('phrases'),
  group: 'anywhere',
  keys: ['Mod+K'],
  readOnly: 'allowed',
  run: () => letterDesk.setState({ asking: 'phrases' }),
};

/** The commands of the letter's screen. */
export const letterCommands: readonly Command<LetterContext>[] = [
  ...historyCommands,
  ...paragraphCommands,
  phrases,
  saveDocument,
  markSent,
  handOver,
  nextToDo,
];
