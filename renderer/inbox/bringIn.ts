import type { InboxFile } from '../../electron/contract/inbox.ts';
import type { Params } from '../../electron/contract/requests.ts';
import { mutate } from '../bridge/mutate.ts';
import { statusState } from '../bridge/statusState.ts';
import { inboxState } from '../state/inboxState.ts';
import { screenState } from '../state/screenState.ts';
import { sayInbox } from '../words/sayInbox.ts';
import { hindranceOf } from './inboxColumns.ts';

type BroughtIn = Params<'inbox.bringIn'>['clips'][number];

/** The files that can be brought in, as they stand on screen. */
export const readyToBring = (files: readonly InboxFile[]): readonly BroughtIn[] =>
  files.flatMap((file) => {
    const { trainee, session, exercise, view, loadKg } = file.placement;
    if (hindranceOf(file) !== null || trainee === null || session === null || exercise === null) return [];
    return {
      arrivalId: file.arrivalId,
      trainee: trainee.value,
      sessionId: session.value.id,
      date: session.value.date,
      exercise: exercise.value,
      view: view?.value ?? null,
      loadKg: loadKg?.value ?? null,
    };
  });

/** Brings in everything that is ready; once nothing is left, the desk shows what came. */
export async function bringAllIn(files: readonly InboxFile[]): Promise<void> {
  const clips = readyToBring(files);
  const brought = await mutate('inbox.bringIn', { clips: [...clips] });
  if (brought === null) return;
  const { clipIds, sessionIds } = brought;
  statusState.getState().tell(sayInbox('brought', { clips: clipIds.length, sessions: sessionIds.length }));
  await inboxState.getState().refresh();
  if (inboxState.getState().count === 0) screenState.getState().go({ kind: 'desk' });
}
