import type { HistoryState } from '../../electron/contract/shapes.ts';
import { mutate } from '../bridge/mutate.ts';
import { goToHandover, screenState } from '../state/screenState.ts';
import { type Availability, allOf, available, type Command, type CommandContext, unavailable } from './command.ts';

/** What a screen with a session tells undo and redo. */
export type HistoryContext = CommandContext & {
  readonly sessionId: string | null;
  /** The names of the acts that undo and redo would reach; null until the session has been read. */
  readonly history: HistoryState | null;
  /** Whether something is being saved, so that `history` may be behind. */
  readonly saving: boolean;
  /** Saves what is still being typed: it is an act too. */
  readonly saveDrafts: () => Promise<void>;
};

const reaches = ({ history, saving }: HistoryContext, direction: 'undo' | 'redo', nothing: string): Availability =>
  saving || (history !== null && history[direction] !== null) ? available : unavailable(nothing);

async function step(context: HistoryContext, request: 'history.undo' | 'history.redo'): Promise<void> {
  const { sessionId } = context;
  await context.saveDrafts();
  if (sessionId !== null) await mutate(request, { sessionId });
}

export const undo: Command<HistoryContext> = {
  id: 'undo',
  group: 'Anywhere',
  label: 'Undo',
  keys: ['Mod+Z'],
  button: 'Undo',
  readOnly: 'refused',
  when: (context) => reaches(context, 'undo', 'There is nothing to undo in this session.'),
  run: (context) => step(context, 'history.undo'),
};

export const redo: Command<HistoryContext> = {
  id: 'redo',
  group: 'Anywhere',
  label: 'Redo',
  keys: ['Mod+Shift+Z', 'Mod+Y'],
  button: 'Redo',
  readOnly: 'refused',
  when: (context) => reaches(context, 'redo', 'There is nothing to redo: nothing was undone since the last change.'),
  run: (context) => step(context, 'history.redo'),
};

export const historyCommands: readonly Command<HistoryContext>[] = [undo, redo];

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
