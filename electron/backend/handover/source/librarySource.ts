import { existsSync } from 'node:fs';
import path from 'node:path';
import type { ClipCover } from '../../../../engine/covers/cover.ts';
import { translated } from '../../../../engine/exercises/translated.ts';
import type { NameMode } from '../../../../engine/names/shownName.ts';
import { ProblemError } from '../../../contract/reply.ts';
import type { Context } from '../../context/context.ts';
import { earlierReviews, letterOfSession, type SessionLetter } from '../../documents/letterOfSession.ts';
import { clipToMeasure } from '../../measure/clipToMeasure.ts';
import { measurementOfClip, recordingOfClip } from '../../measure/measured.ts';
import { measuresOf } from '../../measure/measuresOf.ts';
import { coverOf, listCovers, listCoversOfSession } from '../../store/covers.ts';
import { drawingOf, listDrawings } from '../../store/drawings.ts';
import { factsOf } from '../../store/footage.ts';
import { findSession } from '../../store/sessions.ts';
import { findTrainee } from '../../store/trainees.ts';
import type { HandoverSource, OpenedClip } from './handoverSource.ts';
import { shownClip } from './openedClip.ts';

/** A session of a library as it is handed over, with its letter without pictures. */
export type LibrarySource = HandoverSource & {
  readonly plain: SessionLetter;
  /** What is covered in its clips, clip by clip. */
  readonly covered: readonly { readonly clipId: string; readonly cover: ClipCover }[];
};

/**
 * A session of the library to hand over; the trainee named as they want it unless said otherwise. Throws `not-found`, and
 * `conflict` for a second look.
 */
export function librarySource(context: Context, sessionId: string, names?: NameMode): LibrarySource {
  const library = context.library();
  const session = findSession(library.reading, sessionId);
  const mode = names ?? findTrainee(library.reading, session.trainee_id).names;
  const plain = letterOfSession(context, sessionId, { names: mode });
  const { review, style } = plain;
  return {
    plain,
    covered: listCoversOfSession(library.reading, sessionId).map((row) => ({
      clipId: row.clip_id,
      cover: coverOf(row),
    })),
    review,
    names: mode,
    catalogue: translated(context.catalogue(session.rubric_version), style.language),
    earlier: earlierReviews(context, sessionId),
    measures: measuresOf(context, review),
    letter: (stills) => letterOfSession(context, sessionId, { names: mode, stills }).letter.document,
    openClip: async (clipId) => openClip(context, clipId),
  };
}

function openClip(context: Context, clipId: string): OpenedClip {
  const library = context.library();
  const asked = clipToMeasure(context, library.reading, clipId);
  const { clip, source, setUp } = asked;
  const file = source?.footage.file ? path.join(library.folder.clips, source.footage.file) : null;
  if (!source || file === null || !existsSync(file)) {
    throw new ProblemError(
      'not-found',
      `The footage of "${clip.name}" is not in the library, so its notes went without pictures; put the file back and hand over again.`,
    );
  }
  const { footage, table } = source;
  return shownClip({
    file,
    table,
    shown: { width: footage.shown_width, height: footage.shown_height },
    hasSound: footage.has_audio === 1,
    facts: factsOf(footage),
    drawings: listDrawings(library.reading, clipId).map(drawingOf),
    setUp,
    recording: recordingOfClip(library, asked)?.recording ?? null,
    measurement: measurementOfClip(library, asked),
    covered: listCovers(library.reading, clipId).map(coverOf),
  });
}
