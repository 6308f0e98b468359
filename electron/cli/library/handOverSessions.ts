import type { HandoverOptions, Undelivered } from '../../contract/handover.ts';
import type { Host } from '../run/host.ts';
import { followJobs } from './followJobs.ts';
import { allPages, withLibrary } from './openLibrary.ts';

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
    if (chosen.length === 0) return [];
    const jobs = await followJobs(host, open, () =>
      open.ask('handover.start', { sessionIds: [...chosen], folder, options }),
    );
    const lines: HandoverLine[] = [];
    for (const { id, state, message, sessionId } of jobs) {
      if (sessionId === null) continue;
      const { deliveries } = await open.ask('handover.list', { sessionId });
      const own = deliveries.find(({ jobId }) => jobId === id);
      lines.push({
        sessionId,
        path: own?.path ?? null,
        version: own?.version ?? null,
        failed: own?.failed ?? [],
        problem: state === 'done' ? '' : message,
      });
    }
    return lines;
  });
}
