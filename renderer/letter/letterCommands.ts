import { mutate } from '../bridge/mutate.ts';
import { statusState } from '../bridge/statusState.ts';
import { available, type Command, unavailable } from '../commands/command.ts';
import { named } from '../commands/named.ts';
import { type NightContext, nextToDo } from '../commands/nightCommands.ts';
import { type HistoryContext, handOver, historyCommands, type SessionContext } from '../commands/sessionCommands.ts';
import { saveDrafts, saveLetterDrafts } from '../drafts/drafts.ts';
import { letterState } from '../state/letterState.ts';
import { goToNextDue, isStillDue } from '../state/night.ts';
import { type ReviewData, reviewState } from '../state/reviewState.ts';
import { goToHandover, screenState } from '../state/screenState.ts';
import { sayReasons } from '../words/sayReasons.ts';
import { documentOf, letterDesk } from './letterDesk.ts';
import { paragraphCommands } from './paragraphCommands.ts';
import type { Line } from './paragraphMoves.ts';

export type LetterContext = HistoryContext &
  SessionContext &
  NightContext & {
    /** The lines of the letter where it is shown as it is now; null elsewhere. */
    readonly lines: readonly Line[] | null;
    /** Whether the letter says what its newest version that was sent says. */
    readonly sentAlready: boolean;
    /** Saves the document shown to a file. */
    readonly saveDocument: () => Promise<void>;
  };

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
  when: ({ lines }) => (lines === null ? unavailable(sayReasons('letterNotShown')) : available),
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

/** What the letter of a session tells its commands, as it is at each moment. */
export function letterContext(sessionId: string, save: { readonly current: () => Promise<void> }): LetterContext {
  const data = (): ReviewData | null => {
    const now = reviewState.getState();
    return now.sessionId === sessionId ? now.data : null;
  };
  const letter = () => {
    const now = letterState.getState();
    return now.sessionId === sessionId ? now.letter : null;
  };
  const context: LetterContext = {
    sessionId,
    // A second look has no letter, so this screen never shows one.
    secondLook: false,
    saveDrafts: async () => {
      await saveLetterDrafts();
      await saveDrafts();
    },
    goOn: () => goOnFromLetter(context),
    saveDocument: () => save.current(),
    get lines() {
      const { view } = letterDesk.getState();
      return view.kind === 'sent' || documentOf(view) !== 'letter' ? null : (letter()?.paragraphs ?? null);
    },
    get sentAlready() {
      return letter()?.sentAlready === true;
    },
    get readOnly() {
      return data()?.readOnly === true;
    },
    get graded() {
      const read = data();
      return read !== null && read.grade.state.kind !== 'none';
    },
    get history() {
      return data()?.history ?? null;
    },
    get saving() {
      return statusState.getState().saving === 'saving';
    },
  };
  return context;
}

/** Goes on from the letter: to the handover, back to the review while there is no grade, or to the next session due. */
async function goOnFromLetter({ sessionId, graded, readOnly, saveDrafts: saveAll }: LetterContext): Promise<void> {
  await saveAll();
  if (readOnly || !(await isStillDue(sessionId))) return goToNextDue(sessionId);
  if (graded) goToHandover(sessionId);
  else screenState.getState().go({ kind: 'review', sessionId });
}
