import type { SessionSummary } from '../../electron/contract/desk.ts';
import { statusState } from '../bridge/statusState.ts';
import { type ArrangingContext, arrangingCommands } from '../commands/arrangingCommands.ts';
import type { Command, CommandContext } from '../commands/command.ts';
import { named } from '../commands/named.ts';
import { type NightContext, nextToDo } from '../commands/nightCommands.ts';
import { type HistoryContext, undo } from '../commands/sessionCommands.ts';
import { arrangingState } from '../shared/arranging/arrangingState.ts';
import { deskState } from '../state/deskState.ts';
import { goToNextDue } from '../state/night.ts';
import { screenState } from '../state/screenState.ts';

/** What the desk tells its commands, as it is at each moment. */
export type DeskContext = HistoryContext & ArrangingContext & NightContext;

export const openTrainees: Command<CommandContext> = {
  ...named('openTrainees'),
  group: 'arranging',
  keys: [],
  readOnly: 'allowed',
  run: () => screenState.getState().go({ kind: 'trainees' }),
};

export const openBin: Command<CommandContext> = {
  ...named('openBin'),
  group: 'arranging',
  keys: [],
  readOnly: 'allowed',
  run: () => screenState.getState().go({ kind: 'bin' }),
};

/** What the desk offers by key and in its palette. */
export const deskCommands: readonly Command<DeskContext>[] = [
  nextToDo,
  ...arrangingCommands,
  undo,
  openTrainees,
  openBin,
];

const base = {
  readOnly: false,
  sessionId: null,
  history: null,
  saveDrafts: () => Promise.resolve(),
  goOn: () => goToNextDue(null),
} as const;

/** The desk; its keys speak of the session whose row had the focus last. */
export const deskContext: DeskContext = {
  ...base,
  get saving() {
    return statusState.getState().saving === 'saving';
  },
  get atHand() {
    const { rowId } = arrangingState.getState();
    const session = deskState.getState().sessions.find(({ id }) => id === rowId);
    return session === undefined ? null : { kind: 'session' as const, session };
  },
};

/** What the menu of one session knows. */
export const menuContext = (session: SessionSummary): ArrangingContext => ({
  readOnly: false,
  atHand: { kind: 'session', session },
});
