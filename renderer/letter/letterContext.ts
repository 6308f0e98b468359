import { statusState } from '../bridge/statusState.ts';
import type { NightContext } from '../commands/nightCommands.ts';
import type { HistoryContext, SessionContext } from '../commands/sessionCommands.ts';
import { saveDrafts, saveLetterDrafts } from '../drafts/drafts.ts';
import { letterState } from '../state/letterState.ts';
import { goToNextDue, isStillDue } from '../state/night.ts';
import { type ReviewData, reviewState } from '../state/reviewState.ts';
import { goToHandover, screenState } from '../state/screenState.ts';
import { documentOf, letterDesk } from './letterDesk.ts';
import type { Line } from './paragraphMoves.ts';

export type LetterContext = HistoryContext &
  SessionContext &
  NightContext & {
    /** The lines of the letter where it is shown as it is now, none until they are read; null elsewhere. */
    readonly lines: readonly Line[] | null;
    /** Whether the letter says what its newest version that was sent says. */
    readonly sentAlready: boolean;
    /** Saves the document shown to a file. */
    readonly saveDocument: () => Promise<void>;
  };

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
      return view.kind === 'sent' || documentOf(view) !== 'letter' ? null : (letter()?.paragraphs ?? []);
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
