import { statusState } from '../bridge/statusState.ts';
import type { Command } from '../commands/command.ts';
import { type HistoryContext, handOver, historyCommands, type SessionContext } from '../commands/sessionCommands.ts';
import { saveDrafts, saveLetterDrafts } from '../drafts/drafts.ts';
import { type ReviewData, reviewState } from '../state/reviewState.ts';

export type LetterContext = HistoryContext & SessionContext;

/** The commands of the letter's screen. */
export const letterCommands: readonly Command<LetterContext>[] = [...historyCommands, handOver];

/** What the letter of a session tells its commands, as it is at each moment. */
export function letterContext(sessionId: string): LetterContext {
  const data = (): ReviewData | null => {
    const now = reviewState.getState();
    return now.sessionId === sessionId ? now.data : null;
  };
  return {
    sessionId,
    // A second look has no letter, so this screen never shows one.
    secondLook: false,
    saveDrafts: async () => {
      await saveLetterDrafts();
      await saveDrafts();
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
}
