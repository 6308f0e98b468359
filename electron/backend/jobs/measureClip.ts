import os from 'node:os';
import type { BackendSettings } from '../../contract/backend.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import { assertUnchanged } from '../context/changedFiles.ts';
import type { Context } from '../context/context.ts';
import type { TaskOf } from '../context/tasks.ts';
import type { LogFacts } from '../log/log.ts';
import { clipToMeasure, fileToRecord, lookedAt } from '../measure/clipToMeasure.ts';
import { markMeasuredReps } from '../measure/measuredReps.ts';
import { measureParts } from '../measure/measurementOfClip.ts';
import { currentMethods } from '../measure/methods.ts';
import { type RecordingOrder, recordMotion } from '../measure/recordMotion.ts';
import { deriveAnew, perform } from '../store/acts.ts';
import { inTransaction } from '../store/connection.ts';
import { sessionsOfFootage } from '../store/footage.ts';
import { findJob, finishJob, type JobRow } from '../store/jobs.ts';
import type { Library } from '../store/library.ts';
import {
  findRecordingStamp,
  forgetDamagedRecording,
  type RecordingPart,
  readRecordedParts,
  writeRecordedParts,
} from '../store/recordings.ts';
import { findSession, isReadOnly } from '../store/sessions.ts';
import { forgetContents } from '../store/summaries.ts';
import type { TaskTools } from './queue.ts';

/**
 * Records what a clip's footage shows, unless the same methods recorded it under the same clicks. Where the clip has no
 * reps yet, the measured reps become its reps: an act that can be undone. A session that is only read keeps the recording
 * and gets no reps. An interrupted recording starts over, since one decoding feeds all of it.
 */
export async function measureClip(
  context: Context,
  job: JobRow,
  { signal, report, log }: TaskTools,
  { clipId, joints, again }: TaskOf<'measure'>,
): Promise<void> {
  const library = context.library();
  const asked = clipToMeasure(context, library.reading, clipId);
  const { footage_id: footageId, session_id: sessionId } = asked.clip;
  const { clicks } = asked.setUp;
  const source = fileToRecord(context, asked);
  if (asked.source !== null) await assertUnchanged(library, asked.source.footage, 'readUnknown');
  const looked = lookedAt(asked);
  if (footageId !== null) forgetDamagedRecording(library.writing, footageId);
  const isRecorded = (part: RecordingPart) =>
    footageId !== null &&
    findRecordingStamp(library.reading, footageId, part, clicks, looked)?.method === currentMethods[part];
  const parts: readonly RecordingPart[] = [
    'disc',
    ...(clicks.some(({ what }) => what === 'point') ? (['point'] as const) : []),
    ...(joints ? (['joints'] as const) : []),
  ];
  const wanted = parts.filter((part) => again || !isRecorded(part));
  const tools = await context.mediaTools();
  const order = { ...source, tools, clicks, wanted, ...sharingWith(context.settings.host) };
  const onSlower = (reason: LogFacts) => log.warn('joints without the native library, three times slower', reason);
  const recorded = await recordMotion(order, { signal, onProgress: report, onSlower });
  // Every clip of this footage shows what was recorded, in whichever session it is.
  const showing = footageId === null ? [] : sessionsOfFootage(library.reading, footageId);
  inTransaction(library.writing, () => {
    if (footageId !== null) writeRecordedParts(library.writing, footageId, clicks, recorded, looked);
    for (const id of showing) {
      forgetContents(library.writing, findSession(library.writing, id).trainee_id);
      deriveAnew(library.writing, id);
    }
    // The clip may have been taken out meanwhile; what was recorded waits for it.
    if (findJob(library.writing, job.id)?.clip_id !== clipId) return;
    putFirstReps(context, library, clipId);
    finishJob(library.writing, job.id, { sessionId, clipId });
  });
  for (const each of new Set([sessionId, ...showing])) tellChanged(context, each);
}

/** One core stays free for whoever works at the window meanwhile. */
function sharingWith(host: BackendSettings['host']): Pick<RecordingOrder, 'threads' | 'courtesy'> {
  const cores = os.availableParallelism();
  return host === 'window'
    ? { threads: Math.max(1, cores - 1), courtesy: 'window' }
    : { threads: cores, courtesy: 'nobody' };
}

function putFirstReps(context: Context, library: Library, clipId: string): void {
  const asked = clipToMeasure(context, library.writing, clipId);
  const { clip, reps, setUp, source } = asked;
  if (reps.length > 0 || !source || isReadOnly(library.writing, clip.session_id)) return;
  const parts = readRecordedParts(library.writing, source.footage.id, setUp.clicks, lookedAt(asked));
  const measured = measureParts(asked, parts)?.reps ?? [];
  const about = { sessionId: clip.session_id, actorName: actorName(library), kind: 'undoable' } as const;
  perform(library.writing, about, (changes) => {
    markMeasuredReps(changes, clipId, measured, source.table);
    return { name: { id: 'repsMeasured', values: { count: measured.length } }, value: undefined };
  });
}
