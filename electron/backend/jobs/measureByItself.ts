import type { Context } from '../context/context.ts';
import { findClip, listClips } from '../store/clips.ts';
import { inTransaction } from '../store/connection.ts';
import { listEntries } from '../store/entries.ts';
import { hadMeasuring, removeUnaskedMeasuring } from '../store/jobs.ts';
import { isMeasured, listUnmeasuredSessions, type SessionKey } from '../store/night.ts';
import { findSession } from '../store/sessions.ts';
import { readSettings } from '../store/settings.ts';
import { rankByDay } from './line.ts';
import { measuringOf } from './measuringJob.ts';
import { insertNewJob } from './queue.ts';

/** Whether clips are put in line without being asked for: only where somebody works at a window, and wants it. */
const isWanted = (context: Context): boolean =>
  context.settings.host === 'window' && readSettings(context.library().reading).measureByItself;

/**
 * Puts the clips of a session in line that were never measured and never were in line: one whose measuring failed or was
 * cancelled is left to a person.
 */
export function measureSessionByItself(context: Context, sessionId: string): void {
  if (!isWanted(context)) return;
  const library = context.library();
  const { reading } = library;
  const clips = listEntries(reading, sessionId)
    .flatMap((entry) => listClips(reading, entry.id))
    .filter(
      ({ id, footage_id }) => footage_id !== null && !isMeasured(reading, footage_id) && !hadMeasuring(reading, id),
    );
  if (clips.length === 0) return;
  const rank = rankByDay(findSession(reading, sessionId).date);
  const jobIds = inTransaction(library.writing, () =>
    clips.map(({ id }) =>
      insertNewJob(library, {
        ...measuringOf(findClip(library.writing, id), { joints: true, again: false }),
        rank,
      }),
    ),
  );
  for (const jobId of jobIds) context.jobs.tell(jobId);
}

/** Puts the clips of every session in line, the newest session first; a few sessions at a time, so that requests are answered. */
export async function measureAllByItself(context: Context, isStopped: () => boolean): Promise<void> {
  let after: SessionKey | null = null;
  do {
    // What is asked meanwhile is answered first.
    await new Promise(setImmediate);
    if (isStopped() || !isWanted(context)) return;
    const page: readonly SessionKey[] = listUnmeasuredSessions(context.library().reading, after);
    for (const [, , sessionId] of page) measureSessionByItself(context, sessionId);
    after = page.at(-1) ?? null;
  } while (after !== null);
}

/** Takes out of the line what nobody asked for and has not begun. */
export function stopMeasuringByItself(context: Context): void {
  removeUnaskedMeasuring(context.library().writing);
  context.emit({ name: 'lineChanged', data: {} });
}
