import { randomUUID } from 'node:crypto';
import { sayJob } from '../../../engine/wording/sayJob.ts';
import { deliverHandover } from '../../backend/handover/package/deliverHandover.ts';
import { findMediaTools, type MediaTools } from '../../backend/media/tools/mediaTools.ts';
import type { HandoverOptions, Undelivered } from '../../contract/handover.ts';
import { followJobs } from '../library/followJobs.ts';
import { allPages, type OpenLibrary, withLibrary } from '../library/openLibrary.ts';
import type { FootageOutside } from '../options/footageOutside.ts';
import { count } from '../print/numbers.ts';
import { showStep } from '../print/showStep.ts';
import type { Host } from '../run/host.ts';
import { eachSession } from '../sources/eachSession.ts';
import { reviewClips } from '../sources/reviewClips.ts';
import { type EditionFlags, readEdition } from '../sources/reviewFile.ts';

/** Where and how review files are handed over. */
export type FileHandover = {
  readonly folder: string;
  readonly edition: EditionFlags;
  /** Measures the joints besides the disc: far slower. */
  readonly joints: boolean;
  readonly footageOutside: FootageOutside;
  readonly options: HandoverOptions;
};

/**
 * Hands review files over, one after the other; of several, one that fails keeps none of the others back. Throws what is
 * wrong with a single file, and `cancelled`.
 */
export async function handOverFiles(
  host: Host,
  files: readonly string[],
  handover: FileHandover,
): Promise<readonly HandoverLine[]> {
  const tools = await findMediaTools();
  const [file, ...others] = files;
  if (file !== undefined && others.length === 0) return [await handOverFile(host, file, tools, handover)];
  const outcomes = await eachSession(host, files, (each, its) => handOverFile(its, each, tools, handover));
  return outcomes.map((outcome) =>
    outcome.kind === 'done'
      ? outcome.value
      : { sessionId: null, path: null, version: null, failed: [], problem: outcome.sentence },
  );
}

async function handOverFile(
  host: Host,
  file: string,
  tools: MediaTools,
  { folder, edition: flags, options, ...how }: FileHandover,
): Promise<HandoverLine> {
  const edition = await readEdition(host, file, flags);
  const source = await reviewClips(host, tools, { ...how, file, edition });
  const { path, manifest } = await deliverHandover(
    tools,
    { source, options, version: 1, handedAt: new Date().toISOString() },
    { folder, workId: randomUUID() },
    { signal: host.signal, report: showStep(host) },
  );
  return { sessionId: null, path, version: 1, failed: manifest.failed, problem: '' };
}

/** How one session was handed over, or why it was not; `handover --json` prints a list of these. */
export type HandoverLine = {
  /** Null for a review file. */
  readonly sessionId: string | null;
  readonly path: string | null;
  readonly version: number | null;
  readonly failed: readonly Undelivered[];
  /** Why nothing was handed over; '' if something was. */
  readonly problem: string;
};

/** Sessions that stay at the desk while words in them may be a hidden name: they keep none of the others back. */
async function heldBack(
  { ask }: OpenLibrary,
  sessions: readonly string[],
  { names, narrated }: HandoverOptions,
): Promise<readonly HandoverLine[]> {
  const held: HandoverLine[] = [];
  for (let from = 0; from < sessions.length; from += mostAtOnce) {
    const sessionIds = sessions.slice(from, from + mostAtOnce);
    for (const { sessionId, doubts } of await ask('names.doubts', { sessionIds, narrated, ...(names && { names }) })) {
      const problem = `${count(doubts.length, 'place')} may hold the hidden name; open the library in the window and check ${doubts.length === 1 ? 'it' : 'them'} under “Hand over”.`;
      held.push({ sessionId, path: null, version: null, failed: [], problem });
    }
  }
  return held;
}

const mostAtOnce = 500;

/** Hands over sessions of a library, one after the other; null = every session that is due. Throws `cancelled`. */
export async function handOverSessions(
  host: Host,
  {
    library,
    sessions,
    folder,
    options,
  }: {
    readonly library: string;
    readonly sessions: readonly string[] | null;
    readonly folder: string;
    readonly options: HandoverOptions;
  },
): Promise<readonly HandoverLine[]> {
  return withLibrary(host, host.resolve(library), async (open) => {
    const chosen =
      sessions ??
      (await allPages((after) => open.ask('handover.sessions', { after })))
        .filter(({ due }) => due)
        .map(({ session }) => session.id);
    const held = await heldBack(open, chosen, options);
    const clear = chosen.filter((sessionId) => !held.some((line) => line.sessionId === sessionId));
    if (clear.length === 0) return held;
    const jobs = await followJobs(host, open, () =>
      open.ask('handover.start', { sessionIds: [...clear], folder, options }),
    );
    const lines: HandoverLine[] = [...held];
    for (const { id, state, message, sessionId } of jobs) {
      if (sessionId === null) continue;
      const { deliveries } = await open.ask('handover.list', { sessionId });
      const own = deliveries.find(({ jobId }) => jobId === id);
      lines.push({
        sessionId,
        path: own?.path ?? null,
        version: own?.version ?? null,
        failed: own?.failed ?? [],
        problem: state === 'done' || message === null ? '' : sayJob(message, 'en'),
      });
    }
    return lines;
  });
}
