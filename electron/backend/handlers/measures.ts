import { ProblemError } from '../../contract/reply.ts';
import type { NewJob } from '../context/context.ts';
import { clipToMeasure } from '../measure/clipToMeasure.ts';
import { markMeasuredReps, measuredActName } from '../measure/markMeasuredReps.ts';
import { measurementOfClip, recordingOfClip } from '../measure/measurementOfClip.ts';
import { suggestionsOf } from '../measure/suggestionsOf.ts';
import { type ClipHome, findClip } from '../store/clips.ts';
import { findOpenMeasuring } from '../store/jobs.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';

export const startMeasuring: Handler<'measures.start'> = (context, { clipIds, joints, again }) => {
  const library = context.library();
  const clips = [...new Set(clipIds)].map((clipId) => findClip(library.reading, clipId));
  return { jobIds: clips.map((clip) => context.jobs.add(measuringOf(clip, { joints, again }))) };
};

export const getMeasures: Handler<'measures.get'> = (context, { clipId }) => {
  const library = context.library();
  const asked = clipToMeasure(context, library.reading, clipId);
  const measurement = measurementOfClip(library, asked);
  const { open, dismissed } = suggestionsOf(context, asked, measurement);
  return {
    setUp: asked.setUp,
    measurement,
    recordedAt: recordingOfClip(library, asked)?.recordedAt ?? null,
    jobId: findOpenMeasuring(library.reading, clipId)?.id ?? null,
    suggestions: open,
    dismissed,
  };
};

export const getRecording: Handler<'measures.recording'> = (context, { clipId }) => {
  const library = context.library();
  const known = recordingOfClip(library, clipToMeasure(context, library.reading, clipId));
  return { recording: known?.recording ?? null };
};

export const markMeasured: Handler<'measures.markReps'> = (context, { clipId }) => {
  const library = context.library();
  const asked = clipToMeasure(context, library.reading, clipId);
  const { clip, source } = asked;
  const measured = measurementOfClip(library, asked)?.reps ?? [];
  if (!source || measured.length === 0) {
    throw new ProblemError(
      'conflict',
      `No reps were measured in "${clip.name}", so its reps stayed as they are; measure it first, or mark them by hand.`,
    );
  }
  return actOnSession(context, clip.session_id, (changes) => {
    markMeasuredReps(changes, clipId, measured, source.table);
    return { name: measuredActName(measured.length), value: {} };
  });
};

/** The job that measures a clip. */
export function measuringOf(clip: ClipHome, how: { readonly joints: boolean; readonly again: boolean }): NewJob {
  return {
    kind: 'measure',
    title: `Measure: ${clip.name}`,
    sessionId: clip.session_id,
    clipId: clip.id,
    task: { do: 'measure', clipId: clip.id, ...how },
  };
}
