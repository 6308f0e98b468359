import { followJobs } from './followJobs.ts';
import type { Host } from './host.ts';
import { withLibrary } from './openLibrary.ts';
import { requireAllDone } from './requireAllDone.ts';

/** What came into a library. */
export type TakenIn = { readonly sessionId: string; readonly clips: number };

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
