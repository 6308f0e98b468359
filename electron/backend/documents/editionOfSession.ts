import { type Edition, editionOf } from '../../../engine/edition/edition.ts';
import { onSectionClocks } from '../../../engine/edition/sectionClock.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import type { Review } from '../../../engine/review/review.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { inSnapshot, type Reading } from '../store/connection.ts';
import { newestAct } from '../store/handovers.ts';
import { listLetterEdits, readLetterShape } from '../store/letters.ts';
import { listNameDecisions } from '../store/nameDecisions.ts';
import { readReview } from '../store/readReview.ts';
import { findSession, listSessionsBefore, type SessionRow } from '../store/sessions.ts';
import { trainedBefore } from '../store/trainedBefore.ts';
import { findTrainee } from '../store/trainees.ts';

/** A session as it was at one of its acts: nothing that is done later changes it. */
export type SessionEdition = {
  readonly sessionId: string;
  readonly edition: Edition;
  /** The newest act of the session then; 0 = none. */
  readonly actId: number;
};

type Asked = {
  /** `asWanted`: as the trainee wants it. */
  readonly names: NameMode | 'asWanted';
  /** Whether a letter is written of it: the other documents need no sessions before it. */
  readonly to: 'writeLetter' | 'tellSheet';
  /** `footage`: times are those of the footage, also of a clip that shows a section of it; as the clips play without it. */
  readonly clocks?: 'footage';
};

/**
 * A session to write documents of, read at one moment, without what was measured. Throws `not-found`, and `conflict` for
 * the letter of a second look.
 */
export function editionOfSession(context: Context, sessionId: string, { names, to, clocks }: Asked): SessionEdition {
  const { reading } = context.library();
  return inSnapshot(reading, () => {
    const session = findSession(reading, sessionId);
    if (to === 'writeLetter') assertHasLetter(session);
    const edition = editionOf({
      review: readReview(reading, sessionId),
      catalogue: context.catalogue(session.rubric_version),
      style: { length: session.letter_length, tone: session.letter_tone, language: session.letter_language },
      weekBefore: trainedBefore(reading, session),
      names: names === 'asWanted' ? findTrainee(reading, session.trainee_id).names : names,
      nameDecisions: listNameDecisions(reading, sessionId),
      // The page on filming asks in the letter's words, whatever it is made for.
      edits: listLetterEdits(reading, sessionId),
      shape: readLetterShape(reading, sessionId),
      ...(to === 'writeLetter' && {
        earlier: earlierReviews(context, reading, session),
      }),
    });
    const told = clocks === 'footage' ? edition : onSectionClocks(edition);
    return { sessionId, edition: told, actId: newestAct(reading, sessionId) };
  });
}

/** Throws `conflict` for a second look. */
export function assertHasLetter({ second_look_of }: SessionRow): void {
  if (second_look_of === null) return;
  throw new ProblemError('conflict', 'noLetterForSecondLook');
}

/** The trainee's sessions before, oldest first, read by the rubric of the session at hand. */
function earlierReviews(context: Context, reading: Reading, session: SessionRow): Review[] {
  const to = context.catalogue(session.rubric_version);
  return listSessionsBefore(reading, session).map((each) =>
    reviewUnder(readReview(reading, each.id), { from: context.catalogue(each.rubric_version), to }),
  );
}
