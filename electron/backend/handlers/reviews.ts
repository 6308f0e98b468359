import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { translatedReview } from '../../../engine/edition/shownReview.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import type { Review } from '../../../engine/review/review.ts';
import { step } from '../../../engine/wording/sayJob.ts';
import { ProblemError } from '../../contract/reply.ts';
import { noticeChangedFiles } from '../context/changedFiles.ts';
import { isHandover, openHandover } from '../handover/receive/openHandover.ts';
import { assertFootageAllowed, footageOutside } from '../reviews/footageOutside.ts';
import { readReviewFile } from '../reviews/readReviewFile.ts';
import { readHistoryState } from '../store/acts.ts';
import { findClip, mediaOfSession } from '../store/clips.ts';
import { coverOf, listCoversOfSession } from '../store/covers.ts';
import { readReview } from '../store/readReview.ts';
import { findSession, readPosition, writePosition } from '../store/sessions.ts';
import { trainedBefore } from '../store/trainedBefore.ts';
import { findTrainee } from '../store/trainees.ts';
import type { Handler } from './handler.ts';

export const getReview: Handler<'review.get'> = async (context, { sessionId, language = 'en' }) => {
  const changed = await noticeChangedFiles(context, sessionId);
  const { reading, folder } = context.library();
  const session = findSession(reading, sessionId);
  const catalogue = translated(context.catalogue(session.rubric_version), language);
  return {
    review: inTheFormat(translatedReview(readReview(reading, sessionId), catalogue)),
    media: mediaOfSession(reading, folder, sessionId, changed),
    covers: listCoversOfSession(reading, sessionId).map((row) => ({
      coverId: row.id,
      clipId: row.clip_id,
      cover: coverOf(row),
    })),
    history: readHistoryState(reading, sessionId),
    weekBefore: trainedBefore(reading, session),
    readOnly: session.read_only === 1,
    secondLookOf: session.second_look_of,
    names: findTrainee(reading, session.trainee_id).names,
    position: readPosition(reading, sessionId),
  };
};

/** The review in the published format: a note's message is for documents alone. */
const inTheFormat = (review: Review): Review => ({
  ...review,
  entries: review.entries.map((entry) => ({
    ...entry,
    flags: entry.flags.map(({ noteMessage: _, ...flag }) => flag),
  })),
});

/** Reads it at once, so that a bad one is refused here; the job then reads the clips. A handover is only read afterwards. */
export const importReview: Handler<'reviews.import'> = async (context, params) => {
  const file = path.resolve(params.path);
  context.library();
  const sessionId = randomUUID();
  if (await isHandover(file)) {
    (await openHandover(file, context)).close();
    const jobId = context.jobs.add({
      kind: 'import',
      title: step('importHandover', { file: path.basename(file) }),
      sessionId: null,
      task: { do: 'takeHandover', path: file, sessionId },
    });
    return { sessionId, jobId };
  }
  await assertFootageAllowed(file, await readReviewFile(file, context), params.footageOutside);
  const jobId = context.jobs.add({
    kind: 'import',
    title: step('importReview', { file: path.basename(file) }),
    sessionId: null,
    task: { do: 'review', path: file, sessionId, footageOutside: params.footageOutside },
  });
  return { sessionId, jobId };
};

export const listFootageOutside: Handler<'reviews.footageOutside'> = async (context, params) => {
  const file = path.resolve(params.path);
  // A handover that names footage outside it is none.
  if (await isHandover(file)) return [];
  return footageOutside(file, await readReviewFile(file, context));
};

export const setPosition: Handler<'position.set'> = (context, { sessionId, clipId, frame }) => {
  const { reading, writing } = context.library();
  if (findClip(reading, clipId).session_id !== sessionId) {
    throw new ProblemError('conflict', 'clipElsewhere');
  }
  writePosition(writing, sessionId, { clipId, frame });
  context.jobs.showing(clipId);
  return {};
};
