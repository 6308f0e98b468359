import { goToHandover, screenState } from '../state/screenState.ts';
import { allOf, available, type Command, type CommandContext, unavailable } from './command.ts';

/** What a screen with a session tells the commands that lead on from it. */
export type SessionContext = CommandContext & {
  readonly sessionId: string;
  /** A second look at somebody's clips, kept apart from the first one. */
  readonly secondLook: boolean;
  readonly graded: boolean;
};

export const letter: Command<SessionContext> = {
  id: 'letter',
  group: 'Anywhere',
  label: 'Write the letter',
  keys: ['W'],
  button: 'Letter',
  readOnly: 'allowed',
  when: ({ secondLook }) => (secondLook ? unavailable('A second look has no letter of its own.') : available),
  run: ({ sessionId }) => screenState.getState().go({ kind: 'letter', sessionId }),
};

export const handOver: Command<SessionContext> = {
  id: 'handOver',
  group: 'Anywhere',
  label: 'Hand over',
  keys: ['Shift+W'],
  button: 'Hand over',
  readOnly: 'refused',
  when: ({ secondLook, graded }) =>
    allOf(
      secondLook ? unavailable('A second look isn’t handed over.') : available,
      graded ? available : unavailable('There is no grade to hand over yet: judge more of the scorecard first.'),
    ),
  run: ({ sessionId }) => goToHandover(sessionId),
};
