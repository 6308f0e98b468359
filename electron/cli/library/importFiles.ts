import type { View } from '../../../engine/exercises/exercise.ts';
import { probeClip } from '../../backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../backend/media/tools/mediaTools.ts';
import type { Host } from '../run/host.ts';
import { requireExercise } from '../sources/requireExercise.ts';
import { followJobs, requireAllDone } from './followJobs.ts';
import { type OpenLibrary, withLibrary } from './openLibrary.ts';

/** What came into a library. */
export type Imported = { readonly sessionId: string; readonly clips: number };

type NewSession = { readonly kind: 'new'; readonly trainee: string; readonly date: string; readonly title: string };

export type ClipTarget = {
  readonly library: string;
  readonly exercise: string;
  readonly view: View | undefined;
  readonly into: NewSession | { readonly kind: 'session'; readonly sessionId: string };
};

/**
 * Imports clips into a session, as a new entry of the exercise. All of them are read and checked first, so that one bad
 * clip leaves the library as it was; a new session that no clip came into is discarded.
 */
export async function importClips(host: Host, files: readonly string[], target: ClipTarget): Promise<Imported> {
  return withLibrary(host, host.resolve(target.library), async (library) => {
    const paths = files.map(host.resolve);
    const { exercises } = await library.ask('catalogue.get', {});
    requireExercise(exercises, target.exercise, 'nothing was imported');
    await checkClips(host, paths);
    const { sessionId, discard } = await sessionFor(library, target.into);
    try {
      const jobs = await followJobs(host, library, () =>
        library.ask('clips.import', { sessionId, exercise: target.exercise, view: target.view ?? null, paths }),
      );
      requireAllDone(jobs);
    } catch (error) {
      await discard();
      throw error;
    }
    return { sessionId, clips: paths.length };
  });
}

/** Imports a review file and its clips into a library, whole or not at all. */
export async function importReview(
  host: Host,
  { library: folder, file }: { readonly library: string; readonly file: string },
): Promise<Imported> {
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

type OpenSession = { readonly sessionId: string; readonly discard: () => Promise<void> };

/** The session to import into; `discard` removes one that was added for it, as long as it holds no clip. */
async function sessionFor(library: OpenLibrary, into: ClipTarget['into']): Promise<OpenSession> {
  if (into.kind === 'session') return { sessionId: into.sessionId, discard: async () => undefined };
  const { trainee: name, title, date } = into;
  const known = (await library.ask('desk.trainees', {})).find((trainee) => trainee.name === name)?.id;
  const traineeId = known ?? (await addTrainee(library, name));
  const { sessionId } = await library.ask('sessions.add', { traineeId, title, date });
  const trainee = known === undefined ? 'discard' : 'keep';
  return { sessionId, discard: () => library.tidyUp('sessions.discard', { sessionId, trainee }) };
}

async function addTrainee(library: OpenLibrary, name: string): Promise<string> {
  const usual = { goal: 'growth', experience: 'experienced', units: 'kg', minor: false } as const;
  return (await library.ask('trainees.add', { name, ...usual })).traineeId;
}
