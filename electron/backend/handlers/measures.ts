import type { Click, SetUp } from '../../../engine/recording/setUp.ts';
import type { ActionId } from '../../../engine/wording/sayAction.ts';
import { ProblemError } from '../../contract/reply.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { measuringOf } from '../jobs/measuringJob.ts';
import { insertNewJob } from '../jobs/queue.ts';
import { clipToMeasure } from '../measure/clipToMeasure.ts';
import { addOfferedRep, markMeasuredReps } from '../measure/measuredReps.ts';
import { measurementOfClip, recordingOfClip } from '../measure/measurementOfClip.ts';
import { suggestionsOf } from '../measure/suggestionsOf.ts';
import { type ActName, perform } from '../store/acts.ts';
import type { Changes } from '../store/changes.ts';
import { type ClipHome, findClip } from '../store/clips.ts';
import { inTransaction } from '../store/connection.ts';
import { findOpenMeasuring } from '../store/jobs.ts';
import { findSetUp, readSetUp, setUpRow } from '../store/measuring.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';
import { exactMoment } from './judging.ts';

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
    throw new ProblemError('conflict', 'noRepsMeasured', { clip: clip.name });
  }
  return actOnSession(context, clip.session_id, (changes) => {
    markMeasuredReps(changes, clipId, measured, source.table);
    return { name: { id: 'repsMeasured', values: { count: measured.length } }, value: {} };
  });
};

export const addOffered: Handler<'measures.addOffered'> = (context, { clipId, offered: index }) => {
  const library = context.library();
  const asked = clipToMeasure(context, library.reading, clipId);
  const { clip, source } = asked;
  const rep = measurementOfClip(library, asked)?.offered.find((one) => one.index === index);
  if (!source || !rep) {
    throw new ProblemError('conflict', 'movementGone', { clip: clip.name });
  }
  return actOnSession(context, clip.session_id, (changes) => {
    addOfferedRep(changes, clipId, rep, source.table);
    return { name: { id: 'movementCounted', values: {} }, value: {} };
  });
};

const setUpParts = [
  'discDiameterM',
  'knownLength',
  'facing',
  'follow',
  'plumb',
  'depthClicks',
  'backClicks',
] as const satisfies readonly (keyof SetUp & ActionId)[];

export const changeSetUp: Handler<'measures.setUp'> = (context, { clipId, change }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  for (const { frame } of [...(change.depthClicks ?? []), ...(change.backClicks ?? [])]) {
    exactMoment(reading, clip, frame);
  }
  const before = readSetUp(reading, clipId);
  const after: SetUp = {
    ...before,
    ...Object.fromEntries(Object.entries(change).filter(([, value]) => value !== undefined)),
  };
  const changed = setUpParts.filter((part) => part in change);
  return actOnSession(context, clip.session_id, (changes) => {
    putSetUp(changes, clipId, after);
    return { name: { id: 'setUpChanged', values: { parts: changed } }, value: {} };
  });
};

/** A click at a frame takes the place of an earlier one of its kind there. */
export const addClick: Handler<'measures.click'> = (context, { clipId, click }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  exactMoment(reading, clip, click.frame);
  const { clicks } = readSetUp(reading, clipId);
  const others = clicks.filter(({ what, frame }) => what !== click.what || frame !== click.frame);
  const after = [...others, click];
  if (after.length > mostClicks) {
    throw new ProblemError('conflict', 'clicksFull', { clip: clip.name, most: mostClicks });
  }
  return followAgain(context, clip, {
    clicks: after,
    what: click.what,
    name: { id: 'clicked', values: { clicked: click.what } },
  });
};

export const clearClicks: Handler<'measures.clearClicks'> = (context, { clipId, what }) => {
  const { reading } = context.library();
  const { clicks } = readSetUp(reading, clipId);
  const others = clicks.filter((click) => click.what !== what);
  return followAgain(context, findClip(reading, clipId), {
    clicks: others,
    what,
    name: { id: 'clicksRemoved', values: { clicked: what } },
  });
};

const mostClicks = 200;

/** Clicks of a clip as they are to be, what the act was about, and the act's name. */
type Clicked = { readonly clicks: readonly Click[]; readonly what: Click['what']; readonly name: ActName };

/** The act and the job that follows from it come together or not at all. */
function followAgain(context: Context, clip: ClipHome, { clicks, what, name }: Clicked): { jobId: string } {
  const library = context.library();
  const about = { sessionId: clip.session_id, actorName: actorName(library), kind: 'undoable' } as const;
  const jobId = inTransaction(library.writing, () => {
    perform(library.writing, about, (changes) => {
      putSetUp(changes, clip.id, { ...readSetUp(changes.reading, clip.id), clicks: [...clicks] });
      return { name, value: undefined };
    });
    return insertNewJob(library, measuringOf(clip, { joints: what === 'lifter', again: false }));
  });
  tellChanged(context, clip.session_id);
  context.jobs.tell(jobId);
  return { jobId };
}

function putSetUp(changes: Changes, clipId: string, setUp: SetUp): void {
  const row = setUpRow(clipId, setUp);
  if (findSetUp(changes.reading, clipId)) changes.update('clip_set_up', { clip_id: clipId }, row);
  else changes.insert('clip_set_up', row);
}
