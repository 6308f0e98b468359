import { copyFile, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { step } from '../../../engine/wording/sayJob.ts';
import type { SessionSummary } from '../../contract/desk.ts';
import { type HandedOver, undeliveredSchema } from '../../contract/handover.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Result } from '../../contract/requests.ts';
import type { Context } from '../context/context.ts';
import { assertHasLetter, editionOfSession } from '../documents/editionOfSession.ts';
import { assertNamesClear } from '../documents/nameDoubts.ts';
import { partSuffix, settleFile } from '../files/writeWhole.ts';
import { keptFile } from '../handover/package/handoverZip.ts';
import { contentOfSession } from '../handover/source/librarySource.ts';
import { assertOutsideLibrary } from '../store/folder.ts';
import { type HandoverRow, listDeliveries, listHandovers } from '../store/handovers.ts';
import { assertWritable, findSession } from '../store/sessions.ts';
import { findSummary, readContentHash, setContentHash } from '../store/summaries.ts';
import { findTrainee } from '../store/trainees.ts';
import { sessionPage } from './desk.ts';
import type { Handler } from './handler.ts';

const summary = (row: HandoverRow): HandedOver => ({
  version: row.version,
  handedAt: row.handed_at,
  rubricVersion: row.rubric_version,
  letterVersion: row.letter_version,
  names: row.names,
  sha256: row.sha256,
});

export const startHandover: Handler<'handover.start'> = (context, { sessionIds, folder: asked, options }) => {
  const library = context.library();
  const folder = path.resolve(asked);
  assertOutsideLibrary(library.folder, folder);
  const sessions = [...new Set(sessionIds)].map((sessionId) => {
    assertWritable(library.reading, sessionId);
    const session = findSession(library.reading, sessionId);
    assertHasLetter(session);
    const names = options.names ?? findTrainee(library.reading, session.trainee_id).names;
    if (names !== 'full') {
      const { edition } = editionOfSession(context, sessionId, { names, to: 'tellSheet' });
      assertNamesClear(context, sessionId, edition, options.narrated ? 'all' : 'none');
    }
    return session;
  });
  const jobIds = sessions.map(({ id: sessionId, trainee_id, date }) =>
    context.jobs.add({
      kind: 'handover',
      title: step('handOver', { trainee: findTrainee(library.reading, trainee_id).name, date }),
      sessionId,
      task: { do: 'handover', sessionId, folder, options },
    }),
  );
  return { jobIds };
};

export const listHandedOver: Handler<'handover.list'> = (context, { sessionId }) => {
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  return {
    names: findTrainee(reading, session.trainee_id).names,
    readOnly: session.read_only === 1,
    versions: listHandovers(reading, sessionId).map(summary),
    deliveries: listDeliveries(reading, sessionId).map((row) => ({
      jobId: row.job_id,
      version: row.version,
      deliveredAt: row.delivered_at,
      path: row.path,
      bytes: row.bytes,
      failed: v.parse(v.array(undeliveredSchema), JSON.parse(row.failed)),
    })),
  };
};

export const listToHandOver: Handler<'handover.sessions'> = async (context, page) => {
  // A session whose summary is old may have a grade that the list doesn't know of yet.
  await context.summariesRenewed();
  const { sessions, next } = sessionPage(context, { list: 'graded', ...page });
  return { sessions: sessions.map((session) => toHandOver(context, session)), next };
};

export const getToHandOver: Handler<'handover.session'> = async (context, { sessionId }) => {
  await context.summariesRenewed();
  const { reading, folder } = context.library();
  findSession(reading, sessionId);
  const session = findSummary(reading, folder, sessionId);
  if (session === null || session.mark === '' || session.secondLookOf !== null || session.readOnly) return null;
  return toHandOver(context, session);
};

/** A session that can be handed over, with what was handed over of it last. */
function toHandOver(context: Context, session: SessionSummary): Result<'handover.sessions'>['sessions'][number] {
  const row = listHandovers(context.library().reading, session.id).at(-1);
  const last = row === undefined ? null : { version: row.version, handedAt: row.handed_at };
  return { session, last, due: isDue(context, session.id, row) };
}

/** Whether a session says something else now than what was handed over last; nothing was, without a row. */
function isDue(context: Context, sessionId: string, row: HandoverRow | undefined): boolean {
  if (row === undefined) return true;
  const { reading, writing } = context.library();
  let content = readContentHash(reading, sessionId);
  if (content === null) {
    content = contentOfSession(context, sessionId);
    setContentHash(writing, sessionId, content);
  }
  return content !== row.content_sha256;
}

export const writeKept: Handler<'handover.writeKept'> = async (context, { sessionId, version, path: asked }) => {
  const library = context.library();
  findSession(library.reading, sessionId);
  const row = listHandovers(library.reading, sessionId).find((each) => each.version === version);
  if (row === undefined) {
    throw new ProblemError('not-found', 'neverHandedOver', { version });
  }
  const target = path.resolve(asked);
  assertOutsideLibrary(library.folder, target);
  const file = await keptFile(library.folder, row);
  const part = `${target}${partSuffix}`;
  try {
    await copyFile(file, part);
    await settleFile(part, target);
  } catch (error) {
    await rm(part, { force: true });
    throw new ProblemError(
      'disk',
      'notWritten',
      { file: path.basename(target), folder: path.dirname(target) },
      { cause: error },
    );
  }
  return { path: target, bytes: (await stat(target)).size };
};
