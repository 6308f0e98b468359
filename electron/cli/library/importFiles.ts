import type { View } from '../../../engine/exercises/exercise.ts';
import { probeClip } from '../../backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../backend/media/tools/mediaTools.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Host } from '../run/host.ts';
import { oneLine } from '../run/outcome.ts';
import { followJobs, requireAllDone } from './followJobs.ts';
import { type OpenLibrary, withLibrary } from './openLibrary.ts';

/** What came into a library. */
export type TakenIn = { readonly sessionId: string; readonly clips: number };

type NewSession = { readonly kind: 'new'; readonly trainee: string; readonly date: string; readonly title: string };

export type ClipTarget = {
  readonly library: string;
  readonly exercise: string;
  readonly view: View | undefined;
  readonly into: NewSession | { readonly kind: 'session'; readonly sessionId: string };
};

/**
 * Takes clips into a session, as a new entry of the exercise. Everything is read and checked before anything is
 * added, so that one bad clip leaves the library as it was.
 */
export async function importClips(host: Host, files: readonly string[], target: ClipTarget): Promise<TakenIn> {
  return withLibrary(host, host.resolve(target.library), async (library) => {
    const paths = files.map(host.resolve);
    const { exercises } = await library.ask('catalogue.get', {});
    if (!exercises.some(({ id }) => id === target.exercise)) throw unknownExercise(target.exercise);
    await checkClips(host, paths);
    const sessionId = target.into.kind === 'session' ? target.into.sessionId : await addSession(library, target.into);
    const jobs = await followJobs(host, library, () =>
      library.ask('clips.import', { sessionId, exercise: target.exercise, view: target.view ?? null, paths }),
    );
    requireAllDone(jobs);
    return { sessionId, clips: paths.length };
  });
}

/** Takes a review file and its clips into a library, whole or not at all. */
export async function importReview(
  host: Host,
  { library: folder, file }: { readonly library: string; readonly file: string },
): Promise<TakenIn> {
  return withLibrary(host, host.resolve(folder), async (library) => {
    let sessionId = '';
    const jobs = await followJobs(host, library, async () => {
      ({ sessionId } = await library.ask('reviews.import', { path: host.resolve(file) }));
    });
    requireAllDone(jobs);
    const { review } = await library.ask('review.get', { sessionId });
    return { sessionId, clips: review.entries.reduce((sum, entry) => sum + entry.clips.length, 0) };
  });
}

async function checkClips(host: Host, paths: readonly string[]): Promise<void> {
  const tools = await findMediaTools();
  for (const [index, each] of paths.entries()) {
    host.progress.show(index / paths.length, 'Checking the clips');
    await probeClip(tools, each, { signal: host.signal });
  }
}

async function addSession(library: OpenLibrary, { trainee: name, date, title }: NewSession): Promise<string> {
  const trainees = await library.ask('desk.trainees', {});
  const known = trainees.find((trainee) => trainee.name === name)?.id;
  const traineeId = known ?? (await addTrainee(library, name));
  return (await library.ask('sessions.add', { traineeId, title, date })).sessionId;
}

async function addTrainee(library: OpenLibrary, name: string): Promise<string> {
  const usual = { goal: 'growth', experience: 'experienced', units: 'kg', minor: false } as const;
  return (await library.ask('trainees.add', { name, ...usual })).traineeId;
}

function unknownExercise(id: string): ProblemError {
  const shown = oneLine(id.slice(0, 60));
  return new ProblemError(
    'not-found',
    `The exercise library holds no "${shown}", so nothing was taken in; check the id.`,
  );
}
