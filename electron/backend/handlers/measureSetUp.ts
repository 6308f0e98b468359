import type { Click, SetUp } from '../../../engine/recording/setUp.ts';
import { ProblemError } from '../../contract/reply.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { insertNewJob } from '../jobs/queue.ts';
import { perform } from '../store/acts.ts';
import type { Changes } from '../store/changes.ts';
import { type ClipHome, findClip } from '../store/clips.ts';
import { inTransaction } from '../store/connection.ts';
import { findSetUp, readSetUp, setUpRow } from '../store/measuring.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';
import { exactMoment } from './judging.ts';
import { measuringOf } from './measures.ts';

const names: Readonly<Record<Exclude<keyof SetUp, 'clicks'>, string>> = {
  discDiameterM: 'size of the disc',
  knownLength: 'known length',
  facing: 'facing',
  plumb: 'upright',
  depthClicks: 'hip and knee',
  backClicks: 'back',
};

const list = new Intl.ListFormat('en-GB', { style: 'long', type: 'conjunction' });

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
  const changed = Object.entries(names).filter(([key]) => key in change);
  return actOnSession(context, clip.session_id, (changes) => {
    putSetUp(changes, clipId, after);
    return { name: `Set-up: ${list.format(changed.map(([, words]) => words))}`, value: {} };
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
    throw new ProblemError(
      'conflict',
      `"${clip.name}" has ${mostClicks} clicks already, so none was added; forget the earlier ones first.`,
    );
  }
  return followAgain(context, clip, after, `Clicked: ${click.what}`);
};

export const clearClicks: Handler<'measures.clearClicks'> = (context, { clipId, what }) => {
  const { reading } = context.library();
  const { clicks } = readSetUp(reading, clipId);
  const others = clicks.filter((click) => click.what !== what);
  return followAgain(context, findClip(reading, clipId), others, `Clicks forgotten: ${what}`);
};

const mostClicks = 200;

/** The act and the job that follows from it come together or not at all. */
function followAgain(context: Context, clip: ClipHome, clicks: readonly Click[], name: string): { jobId: string } {
  const library = context.library();
  const about = { sessionId: clip.session_id, actorName: actorName(library), kind: 'undoable' } as const;
  const jobId = inTransaction(library.writing, () => {
    perform(library.writing, about, (changes) => {
      putSetUp(changes, clip.id, { ...readSetUp(changes.reading, clip.id), clicks: [...clicks] });
      return { name, value: undefined };
    });
    return insertNewJob(library, measuringOf(clip, { joints: false, again: false }));
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
