import { statusState } from '../bridge/statusState.ts';
import type { Command } from '../commands/command.ts';
import { type NightContext, nextToDo } from '../commands/nightCommands.ts';
import { type HistoryContext, handOver, historyCommands, type SessionContext } from '../commands/sessionCommands.ts';
import { saveDrafts, saveLetterDrafts } from '../drafts/drafts.ts';
import { goToNextDue, isStillDue } from '../state/night.ts';
import { type ReviewData, reviewState } from '../state/reviewState.ts';
import { goToHandover, screenState } from '../state/screenState.ts';

export type LetterContext = HistoryContext & SessionContext & NightContext;

/** The commands of the letter's screen. */
export const letterCommands: readonly Command<LetterContext>[] = [...historyCommands, handOver, nextToDo];

/** What the letter of a session tells its commands, as it is at each moment. */
export function letterContext(sessionId: string): LetterContext {
  const data = (): ReviewData | null => {
    const now = reviewState.getState();
    return now.sessionId === sessionId ? now.data : null;
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
