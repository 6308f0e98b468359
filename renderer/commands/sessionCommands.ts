import type { HistoryState } from '../../electron/contract/shapes.ts';
import { mutate } from '../bridge/mutate.ts';
import { redoAtDesk, undoAtDesk } from '../shared/arranging/removing.ts';
import { goToHandover, screenState } from '../state/screenState.ts';
import { sayReasons } from '../words/sayReasons.ts';
import { type Availability, allOf, available, type Command, type CommandContext, unavailable } from './command.ts';
import { named } from './named.ts';

/** What a screen with a session tells undo and redo. */
export type HistoryContext = CommandContext & {
  /** Null on the desk, where undo and redo go over what was done with sessions as wholes. */
  readonly sessionId: string | null;
  /** The names of the acts that undo and redo would reach; null until the session has been read. */
  readonly history: HistoryState | null;
  /** Whether something is being saved, so that `history` may be behind. */
  readonly saving: boolean;
  /** Saves what is still being typed: it is an act too. */
  readonly saveDrafts: () => Promise<void>;
};

const reaches = (
  { sessionId, history, saving }: HistoryContext,
  direction: 'undo' | 'redo',
  nothing: string,
): Availability =>
  saving || sessionId === null || (history !== null && history[direction] !== null) ? available : unavailable(nothing);

async function step(context: HistoryContext, request: 'history.undo' | 'history.redo'): Promise<void> {
  const { sessionId } = context;
  await context.saveDrafts();
  if (sessionId !== null) await mutate(request, { sessionId });
  else if (request === 'history.undo') await undoAtDesk();
  else await redoAtDesk();
}

export const undo: Command<HistoryContext> = {
  ...named('undo'),
  group: 'anywhere',
  keys: ['Mod+Z'],
  readOnly: 'refused',
  when: (context) => reaches(context, 'undo', sayReasons('nothingToUndo')),
  run: (context) => step(context, 'history.undo'),
};

export const redo: Command<HistoryContext> = {
  ...named('redo'),
  group: 'anywhere',
  keys: ['Mod+Shift+Z', 'Mod+Y'],
  readOnly: 'refused',
  when: (context) => reaches(context, 'redo', sayReasons('nothingToRedo')),
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
  ...named('letter'),
  group: 'anywhere',
  keys: ['W'],
  readOnly: 'allowed',
  when: ({ secondLook }) => (secondLook ? unavailable(sayReasons('secondLookLetter')) : available),
  run: ({ sessionId }) => screenState.getState().go({ kind: 'letter', sessionId }),
};

export const handOver: Command<SessionContext> = {
  ...named('handOver'),
  group: 'anywhere',
  keys: ['Shift+W'],
  readOnly: 'refused',
  when: ({ secondLook, graded }) =>
    allOf(
      secondLook ? unavailable(sayReasons('secondLookHandOver')) : available,
      graded ? available : unavailable(sayReasons('noGrade')),
    ),
  run: ({ sessionId }) => goToHandover(sessionId),
};
