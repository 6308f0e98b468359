import type { SessionSummary } from '../../electron/contract/desk.ts';
import { mutate } from '../bridge/mutate.ts';
import { statusState } from '../bridge/statusState.ts';
import { type ArrangingContext, arrangingCommands } from '../commands/arrangingCommands.ts';
import { type Availability, available, type Command, type CommandContext, unavailable } from '../commands/command.ts';
import { named } from '../commands/named.ts';
import { type NightContext, nextToDo } from '../commands/nightCommands.ts';
import { type HistoryContext, redo, undo } from '../commands/sessionCommands.ts';
import { arrangingState } from '../shared/arranging/arrangingState.ts';
import { sessionWords, undoAtDesk } from '../shared/arranging/removing.ts';
import { deskState, listOf } from '../state/deskState.ts';
import { goToNextDue } from '../state/night.ts';
import { screenState } from '../state/screenState.ts';
import { sayArranging } from '../words/sayArranging.ts';
import { sayReasons } from '../words/sayReasons.ts';

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

const sessionAtHand = ({ atHand }: ArrangingContext): SessionSummary | null =>
  atHand?.kind === 'session' ? atHand.session : null;

const canFinish = (context: ArrangingContext, finished: boolean): Availability => {
  const session = sessionAtHand(context);
  if (session === null) return unavailable(sayReasons('nothingAtHand'));
  if (session.readOnly || session.secondLookOf !== null) return unavailable(sayReasons('notDueAnyway'));
  if (finished && listOf(session) === 'done') return unavailable(sayReasons('notDueAnyway'));
  return session.finished === finished ? unavailable(sayReasons(finished ? 'notDueAnyway' : 'notFinished')) : available;
};

async function finish(context: ArrangingContext, finished: boolean): Promise<void> {
  const session = sessionAtHand(context);
  if (session === null || (await mutate('sessions.finish', { sessionId: session.id, finished })) === null) return;
  const said = sayArranging(finished ? 'sessionFinished' : 'sessionTakenUp', { session: sessionWords(session) });
  statusState.getState().say(said, { doing: sayArranging('undo'), run: () => void undoAtDesk() });
}

/** A session that nobody waits for is due no more. */
export const finishSession: Command<ArrangingContext> = {
  ...named('finishSession'),
  group: 'arranging',
  keys: ['Shift+F2'],
  readOnly: 'allowed',
  when: (context) => canFinish(context, true),
  run: (context) => finish(context, true),
};

export const takeUpAgain: Command<ArrangingContext> = {
  ...named('takeUpAgain'),
  group: 'arranging',
  keys: [],
  readOnly: 'allowed',
  when: (context) => canFinish(context, false),
  run: (context) => finish(context, false),
};

/** Also where there are no clips yet, of which a click on the row asks first. */
export const openReview: Command<ArrangingContext> = {
  ...named('openReview'),
  group: 'arranging',
  keys: [],
  readOnly: 'allowed',
  when: (context) => (sessionAtHand(context) === null ? unavailable(sayReasons('nothingAtHand')) : available),
  run: (context) => {
    const session = sessionAtHand(context);
    if (session !== null) screenState.getState().go({ kind: 'review', sessionId: session.id });
  },
};

/** What the menu of a session's row holds. */
export const rowCommands: readonly Command<ArrangingContext>[] = [
  openReview,
  ...arrangingCommands,
  finishSession,
  takeUpAgain,
];

/** What the desk offers by key and in its palette. */
export const deskCommands: readonly Command<DeskContext>[] = [
  nextToDo,
  ...rowCommands,
  undo,
  redo,
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
