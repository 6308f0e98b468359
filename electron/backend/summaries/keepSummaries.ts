import type { JudgingData } from '../catalogue/loadCatalogue.ts';
import { afterEachAct } from '../store/acts.ts';
import { placeAnew } from '../store/arrivals.ts';
import { inTransaction } from '../store/connection.ts';
import type { Library } from '../store/library.ts';
import { isSessionSound } from '../store/rowDigests.ts';
import { findSessionAnywhere } from '../store/sessions.ts';
import {
  forgetContents,
  listStale,
  removeSummary,
  takeSummaryAsItIs,
  traineeOfSummary,
  writeSummary,
} from '../store/summaries.ts';
import { freshSummary } from './freshSummary.ts';

/**
 * Sees that every act, undo and redo writes its session's summary in its own transaction, and which files of the inbox are
 * in it.
 */
export function keepSummaries({ writing }: Library, judging: JudgingData): void {
  afterEachAct(writing, (sessionId) => {
    const { trainee_id: traineeId, removed_at: removedAt } = findSessionAnywhere(writing, sessionId);
    // The letters of both tell of the sessions before them.
    forgetContents(writing, traineeOfSummary(writing, sessionId) ?? traineeId);
    if (removedAt === null) writeSummary(writing, sessionId, freshSummary(writing, sessionId, judging));
    else removeSummary(writing, sessionId);
    forgetContents(writing, traineeId);
    placeAnew(writing, sessionId);
  });
}

/** Makes the summaries of some sessions anew, in one transaction; that of a damaged session stays as it is. */
export function renewSummaries({ writing }: Library, judging: JudgingData, sessionIds: readonly string[]): void {
  if (sessionIds.length === 0) return;
  inTransaction(writing, () => {
    for (const id of sessionIds) {
      if (isSessionSound(writing, id)) writeSummary(writing, id, freshSummary(writing, id, judging));
      else takeSummaryAsItIs(writing, id, judging.fingerprint(findSessionAnywhere(writing, id).rubric_version));
    }
  });
}

const mostAtOnce = 5;

/**
 * Makes every summary anew that was made from other judging data, as after an upgrade: a few at a time, so that requests
 * are answered in between. `onRenewed` hears of each session; stops early once `isStopped` says so.
 */
export async function renewStaleSummaries(
  library: Library,
  judging: JudgingData,
  { onRenewed, isStopped }: { readonly onRenewed: (sessionId: string) => void; readonly isStopped: () => boolean },
): Promise<void> {
  // The requests of whoever opened the library are answered first.
  await new Promise(setImmediate);
  for (const version of judging.rubricVersions()) {
    while (!isStopped()) {
      const judgingSha256 = judging.fingerprint(version);
      const stale = listStale(library.reading, { version, judgingSha256, limit: mostAtOnce });
      if (stale.length === 0) break;
      renewSummaries(library, judging, stale);
      for (const id of stale) onRenewed(id);
      await new Promise(setImmediate);
    }
  }
}
