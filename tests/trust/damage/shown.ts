import type { Backend } from '../../../electron/contract/backend.ts';
import type { DamagedList } from '../../../electron/contract/library.ts';
import type { Params, RequestName, Result } from '../../../electron/contract/requests.ts';
import type { SeedLibrary } from '../harness/seedLibrary.ts';

/** What the app shows of a library, view by view, as JSON; `refused` where it says that it is damaged. */
export type Shown = Readonly<Record<string, string>>;

export const refused = 'refused';

/** Looks at everything that a person sees of a library. Sentences of other problems than damage are told as they are. */
export async function shownOf(
  backend: Backend,
  { sessionId, emptySessionId, clipId, traineeId }: SeedLibrary,
): Promise<Shown> {
  const told = await backend.ask('library.damage', {});
  const damaged: readonly DamagedList[] = told.ok ? told.value : [];
  const look = async <N extends RequestName>(
    name: N,
    params: Params<N>,
    part: (value: Result<N>) => unknown = (value) => value,
  ): Promise<string> => {
    const reply = await backend.ask(name, params);
    if (reply.ok) return JSON.stringify(part(reply.value));
    const { code, message } = reply.problem;
    // Where the window has said which lists a fault made wrong, that something of them is gone is told.
    if (code === 'library-damaged' || (code === 'not-found' && damaged.length > 0)) return refused;
    return `${code} ${message.id}`;
  };
  const state = await look('library.state', {}, (value) => ({ ...value, folder: '' }));
  const sessions = await look('desk.sessions', {}, ({ sessions: lines }) =>
    lines.map(({ posters: _, ...line }) => line),
  );
  const lists = (...shown: readonly DamagedList[]): boolean => shown.some((list) => damaged.includes(list));
  return {
    state,
    sessions: sessions.includes('"damaged":true') || lists('sessions', 'trainees') ? refused : sessions,
    trainees: lists('trainees') ? refused : await look('desk.trainees', {}),
    settings: (await look('settings.damaged', {})) === 'true' ? refused : await look('settings.get', {}),
    review: await look('review.get', { sessionId }),
    otherReview: await look('review.get', { sessionId: emptySessionId }),
    history: await look('history.list', { sessionId }),
    grade: await look('grade.get', { sessionId }),
    letter: await look('letters.get', { sessionId }),
    sentLetter: await look('letters.sent', { sessionId, version: 1 }),
    measures: await look('measures.get', { clipId }),
    recording: await look('measures.recording', { clipId }),
    frames: await look('clips.frameTable', { clipId }),
    trainee: lists('sessions', 'trainees') ? refused : await look('trainees.history', { traineeId }),
    handovers: await look('handover.list', { sessionId }),
    bin: lists('sessions') ? refused : await look('bin.list', {}),
    inbox: lists('inbox') ? refused : await look('inbox.count', {}),
  };
}
