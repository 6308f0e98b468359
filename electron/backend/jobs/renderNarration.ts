import { existsSync } from 'node:fs';
import * as v from 'valibot';
import { flagRows } from '../../../engine/sheet/flagRows.ts';
import { step } from '../../../engine/wording/sayJob.ts';
import { coveringSchema } from '../../contract/handover.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import type { TaskOf } from '../context/tasks.ts';
import { assertNamesClear } from '../documents/nameDoubts.ts';
import { coversOf } from '../handover/package/writeClip.ts';
import { renderNarratedFilm } from '../handover/render/clips/narratedFilm.ts';
import { pictureNote, pictureWords } from '../handover/render/pictures/stills.ts';
import { librarySource } from '../handover/source/librarySource.ts';
import { findClip } from '../store/clips.ts';
import { inTransaction } from '../store/connection.ts';
import { finishJob, type JobRow } from '../store/jobs.ts';
import type { JobTools } from './queue.ts';

/** Writes a clip's narration as a film, with everything that is covered in it. Whole or not at all. */
export async function renderNarration(
  context: Context,
  job: JobRow,
  { signal, report }: JobTools,
  { clipId, path }: TaskOf<'narration'>,
): Promise<void> {
  const library = context.library();
  const { session_id: sessionId, name } = findClip(library.reading, clipId);
  const { edition, openClip } = librarySource(context, sessionId, 'asWanted');
  assertNamesClear(context, sessionId, edition, { clipId });
  const opened = await openClip(clipId, { signal, report });
  const { narration } = opened;
  if (narration === null || !existsSync(narration.soundFile)) {
    throw new ProblemError('not-found', 'notNarrated', { clip: name });
  }
  const language = edition.catalogue.language ?? 'en';
  const notes = flagRows(edition.review, edition.catalogue)
    .filter((row) => row.clip === clipId)
    .flatMap((row) => {
      const note = pictureNote(row, opened.clip.table, language);
      return note === null ? [] : [{ flagId: row.flagId, note }];
    });
  const covers = coversOf(opened, v.parse(coveringSchema, {}), name);
  await renderNarratedFilm(await context.mediaTools(), { ...opened.clip, covers }, narration, path, {
    ...{ notes, signal, words: pictureWords(language) },
    onProgress: (share) => report(share, step('narratedFilm')),
  });
  inTransaction(library.writing, () => finishJob(library.writing, job.id, { sessionId, clipId }));
}
