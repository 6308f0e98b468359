import type { Backend } from '../../../electron/contract/backend.ts';
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
  const look = async <N extends RequestName>(
    name: N,
    params: Params<N>,
    part: (value: Result<N>) => unknown = (value) => value,
  ): Promise<string> => {
    const reply = await backend.ask(name, params);
    if (reply.ok) return JSON.stringify(part(reply.value));
    return reply.problem.code === 'library-damaged' ? refused : `${reply.problem.code} ${reply.problem.message.id}`;
  };
  const state = await look('library.state', {}, (value) => ({ ...value, folder: '' }));
  const sessions = await look('desk.sessions', {}, ({ sessions: lines }) =>
    lines.map(({ posters: _, ...line }) => line),
  );
  const damaged = await look('library.damage', {});
  return {
    state,
    sessions: sessions.includes('"damaged":true') || damaged.includes('sessions') ? refused : sessions,
    trainees: damaged.includes('trainees') ? refused : await look('desk.trainees', {}),
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
    trainee: await look('trainees.history', { traineeId }),
    handovers: await look('handover.list', { sessionId }),
    bin: damaged.includes('sessions') ? refused : await look('bin.list', {}),
    inbox: damaged.includes('inbox') ? refused : await look('inbox.count', {}),
  };
}
