import { mutate } from '../bridge/mutate.ts';
import { saveDrafts } from '../drafts/flagDrafts.ts';
import { reviewState } from '../state/reviewState.ts';

/** Takes the last act back, after whatever is still being typed has been saved. */
export async function undo(): Promise<void> {
  const { sessionId } = reviewState.getState();
  await saveDrafts();
  if (sessionId !== null) await mutate('history.undo', { sessionId });
}

/** Does the last undone act again. */
export async function redo(): Promise<void> {
  const { sessionId } = reviewState.getState();
  await saveDrafts();
  if (sessionId !== null) await mutate('history.redo', { sessionId });
}
