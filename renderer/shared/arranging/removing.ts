import type { SessionSummary } from '../../../electron/contract/desk.ts';
import type { Clip, Entry } from '../../../engine/review/review.ts';
import { day } from '../../base/figures.ts';
import { mutate } from '../../bridge/mutate.ts';
import { statusState } from '../../bridge/statusState.ts';
import { catalogueState } from '../../state/catalogueState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayArranging } from '../../words/sayArranging.ts';
import { sayActionName } from '../sayActionName.ts';
import { leaveClip } from './leaveClip.ts';

/** Says in the status line what lies in the bin now, and offers to bring it back. */
function offerBack(sentence: string, undo: () => Promise<unknown>): void {
  statusState.getState().say(sentence, { doing: sayArranging('undo'), run: () => void undo() });
}

/** Puts a clip into the bin. */
export async function removeClip(sessionId: string, clip: Clip): Promise<void> {
  const leave = leaveClip(clip.id);
  if ((await mutate('clips.remove', { clipId: clip.id })) === null) return;
  leave();
  offerBack(sayArranging('clipRemoved', { clip: clip.name }), async () => {
    if ((await mutate('history.undo', { sessionId })) === null) return;
    await reviewState.getState().refresh();
    reviewState.getState().show({ clipId: clip.id, frame: 0 });
  });
}

/** Puts an exercise with its clips into the bin. */
export async function removeEntry(sessionId: string, entry: Entry): Promise<void> {
  if ((await mutate('entries.remove', { entryId: entry.id })) === null) return;
  const { catalogue } = catalogueState.getState();
  const exercise = catalogue?.exercises.find(({ id }) => id === entry.exercise)?.name ?? entry.exercise;
  offerBack(sayArranging('entryRemoved', { exercise, clips: entry.clips.length }), () =>
    mutate('history.undo', { sessionId }),
  );
}

/** A session in a sentence: "Mira Holt, Lower body, 4 March 2026". */
export const sessionWords = ({
  traineeName,
  title,
  date,
}: Pick<SessionSummary, 'traineeName' | 'title' | 'date'>): string =>
  [traineeName, title, day(date)].filter((part) => part !== '').join(', ');

/** Puts a session into the bin. */
export async function removeSession(session: SessionSummary): Promise<void> {
  if ((await mutate('sessions.remove', { sessionId: session.id })) === null) return;
  offerBack(sayArranging('sessionRemoved', { session: sessionWords(session) }), () =>
    mutate('history.undo', { sessionId: session.id }),
  );
}

/** Takes the newest act on a session as a whole back, and says which. */
export async function undoAtDesk(): Promise<void> {
  const undone = await mutate('desk.undo', {});
  if (undone !== null) statusState.getState().say(sayArranging('undone', { act: sayActionName(undone.name) }));
}

/** Does the act on sessions as wholes again that was taken back last, and says which. */
export async function redoAtDesk(): Promise<void> {
  const redone = await mutate('desk.redo', {});
  if (redone !== null) statusState.getState().say(sayArranging('redone', { act: sayActionName(redone.name) }));
}
