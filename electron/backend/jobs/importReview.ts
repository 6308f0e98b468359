import { mkdir, rm } from 'node:fs/promises';
import path from 'node:path';
import type { Clip, Review } from '../../../engine/review/review.ts';
import { type JobStep, step, stepOf } from '../../../engine/wording/sayJob.ts';
import { ProblemError } from '../../contract/reply.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import type { TaskOf } from '../context/tasks.ts';
import { openHandover } from '../handover/receive/openHandover.ts';
import { assertFootageAllowed } from '../reviews/footageOutside.ts';
import { readReviewFile } from '../reviews/readReviewFile.ts';
import { type ClipSource, writeReviewRows } from '../reviews/writeReviewRows.ts';
import { perform } from '../store/acts.ts';
import { inTransaction } from '../store/connection.ts';
import { findFootageByContent, insertFootage } from '../store/footage.ts';
import { readFrameTable } from '../store/frameTables.ts';
import { finishJob, type JobRow } from '../store/jobs.ts';
import type { Library } from '../store/library.ts';
import { factsOnlyRow, type ImportedFootage, importFootage } from './importFootage.ts';
import { queueProxy } from './makeFootageProxy.ts';
import type { JobTools } from './queue.ts';

/** Which review file, the id its session gets, and who speaks in its letter: as the file or as the library says. */
export type ReviewImport = {
  readonly file: string;
  readonly sessionId: string;
  readonly speaks: 'file' | 'library';
  /** Somebody else judged it: it is only read here. */
  readonly readOnly?: boolean;
  /** What it may name outside its folder: what a person allowed, or anything, since it came with the app. */
  readonly footageOutside: readonly string[] | 'any';
};

type ImportedClips = {
  /** By the review's id of the clip; clips of equal content share one. */
  readonly byClip: Map<string, ImportedFootage>;
  readonly byContent: Map<string, ImportedFootage>;
};

/**
 * Imports a review file and its clips as a new session, and with it those that came before it: all of them or none. The job's session
 * is that of the file.
 */
export async function importReview(
  context: Context,
  job: JobRow,
  tools: JobTools,
  asked: ReviewImport,
  before: readonly ReviewImport[] = [],
): Promise<void> {
  const library = context.library();
  const byContent: ImportedClips['byContent'] = new Map();
  const sessions: { readonly asked: ReviewImport; readonly review: Review; readonly imported: ImportedClips }[] = [];
  for (const one of [...before, asked]) {
    const review = await readReviewFile(one.file, context);
    // Again, since it may have been changed while it waited in line.
    if (one.footageOutside !== 'any') await assertFootageAllowed(one.file, review, one.footageOutside);
    sessions.push({ asked: one, review, imported: { byClip: new Map(), byContent } });
  }
  const clips = sessions.flatMap((one) =>
    clipsOf(one.review).map((clip) => ({ clip, file: one.asked.file, imported: one.imported })),
  );
  let proxyJobs: readonly string[] = [];
  try {
    for (const [index, { imported, ...clip }] of clips.entries()) {
      await importClipFile(context, { ...clip, index, of: clips.length }, tools, imported);
    }
    inTransaction(library.writing, () => {
      for (const each of byContent.values()) each.record(library.writing);
      proxyJobs = sessions.flatMap((one) => addSession(library, one.review, one.imported, one.asked));
      finishJob(library.writing, job.id, { sessionId: asked.sessionId, clipId: null });
    });
  } catch (error) {
    for (const { imported } of sessions) for (const each of imported.byClip.values()) await each.discard();
    throw error;
  }
  context.emit({ name: 'traineesChanged', data: {} });
  for (const one of sessions) tellChanged(context, one.asked.sessionId);
  for (const each of proxyJobs) context.jobs.tell(each);
}

async function importClipFile(
  context: Context,
  {
    clip,
    index,
    of,
    file,
  }: { readonly clip: Clip; readonly index: number; readonly of: number; readonly file: string },
  { signal, report }: JobTools,
  imported: ImportedClips,
): Promise<void> {
  if (clip.path === undefined) return;
  const source = path.resolve(path.dirname(file), clip.path);
  const work = {
    signal,
    report: (share: number, doing: JobStep | null) => report((index + share) / of, doing && stepOf(clip.name, doing)),
  };
  const fresh = await importFootage(context.library(), await context.mediaTools(), source, work);
  const sha256 = fresh.footage.sha256 ?? '';
  const one = imported.byContent.get(sha256) ?? fresh;
  imported.byContent.set(sha256, one);
  imported.byClip.set(clip.id, one);
  if (clip.facts?.sha256 === undefined || clip.facts.sha256 === sha256) return;
  throw new ProblemError('bad-review', 'reviewFootageWrong', { file: path.basename(source) });
}

/** Adds the session within the caller's transaction; gives the ids of the jobs that make playable copies. */
function addSession(library: Library, review: Review, imported: ImportedClips, asked: ReviewImport): string[] {
  const clips = clipsOf(review);
  const sources = new Map(clips.map((clip) => [clip.id, sourceOf(library, clip, imported.byClip.get(clip.id))]));
  const about = { sessionId: asked.sessionId, actorName: actorName(library), kind: 'once' } as const;
  const clipIds = perform(library.writing, about, (changes) => ({
    name: { id: 'sessionImported', values: { trainee: review.trainee.name } },
    value: writeReviewRows(changes, review, sources, asked),
  }));
  return [...imported.byContent.values()].flatMap(({ footage }) => {
    const clip = clips.find((each) => imported.byClip.get(each.id)?.footage === footage);
    const clipId = clip && clipIds.get(clip.id);
    if (!clip || clipId === undefined) return [];
    return queueProxy(library, footage, { name: clip.name, sessionId: asked.sessionId, clipId }) ?? [];
  });
}

/** Where a clip gets its footage: just imported, known to the library by its content, facts alone, or none. */
function sourceOf(library: Library, clip: Clip, imported: ImportedFootage | undefined): ClipSource {
  if (imported) {
    // A file that does not say otherwise has the format's default of 1; the footage may know better.
    const stated = clip.realTimeFactor !== 1;
    const realTimeFactor = stated ? clip.realTimeFactor : imported.footage.real_time_factor;
    return { footageId: imported.footage.id, table: imported.table, realTimeFactor };
  }
  const { facts, realTimeFactor } = clip;
  if (!facts) return { footageId: null, table: undefined, realTimeFactor };
  const known = facts.sha256 === undefined ? undefined : findFootageByContent(library.writing, facts.sha256);
  if (known) {
    return { footageId: known.id, table: readFrameTable(library.writing, known.id, 'original'), realTimeFactor };
  }
  const row = factsOnlyRow(facts);
  insertFootage(library.writing, row);
  return { footageId: row.id, table: undefined, realTimeFactor };
}

function clipsOf(review: Review): Clip[] {
  return review.entries.flatMap((entry) => entry.clips);
}

/** Imports another coach's handover as a read-only session, whole or not at all. */
export async function importHandover(
  context: Context,
  job: JobRow,
  tools: JobTools,
  { path: packagePath, sessionId }: TaskOf<'takeHandover'>,
): Promise<void> {
  const unpacked = path.join(context.library().folder.handovers, `.unfinished-${job.id}`);
  const received = await openHandover(packagePath, context);
  try {
    await rm(unpacked, { recursive: true, force: true });
    await mkdir(unpacked);
    tools.report(null, step('unpacking'));
    const file = await received.unpack(unpacked, tools.signal);
    await importReview(context, job, tools, {
      file,
      sessionId,
      speaks: 'file',
      readOnly: true,
      footageOutside: [],
    });
  } finally {
    received.close();
    await rm(unpacked, { recursive: true, force: true });
  }
}
