import { alignReviews } from '../../../engine/agreement/alignReviews.ts';
import { compareReviews } from '../../../engine/agreement/compareReviews.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Review } from '../../../engine/review/review.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Result } from '../../contract/requests.ts';
import { firstRubricVersion } from '../catalogue/loadCatalogue.ts';
import type { Context } from '../context/context.ts';
import { reviewOfText } from '../reviews/readReviewFile.ts';
import { readReview } from '../store/readReview.ts';
import { findSession } from '../store/sessions.ts';
import type { Handler } from './handler.ts';
import { sessionCatalogue } from './judging.ts';

/** A judgement with the judging data it was made by. */
type Judged = { readonly review: Review; readonly from: Catalogue };

/** A session's judgement. Throws `not-found`. */
export const judgedIn = (context: Context, sessionId: string): Judged => ({
  from: sessionCatalogue(context, sessionId),
  review: readReview(context.library().reading, sessionId),
});

/** A session and another judgement by the rubric of the session, the other's clips paired with the session's. */
export function agreementOf(context: Context, firstId: string, { review, from }: Judged) {
  const { review: first, from: catalogue } = judgedIn(context, firstId);
  const second = alignReviews(reviewUnder(review, { from, to: catalogue }), first);
  return {
    agreement: compareReviews(first, second, catalogue),
    rubricVersion: catalogue.rubric.version,
    clips: first.entries.flatMap((entry) => entry.clips.map(({ id, name }) => ({ id, name }))),
    sharedClips: second.entries.reduce((sum, entry) => sum + entry.clips.length, 0),
  };
}

/** Two judgements that share clips. Throws `conflict` where they share none. */
function compared(context: Context, firstId: string, other: Judged): Result<'agreement.compare'> {
  const { sharedClips, ...answer } = agreementOf(context, firstId, other);
  if (sharedClips > 0) return answer;
  throw new ProblemError('conflict', 'nothingShared');
}

/** Two sessions that share clips. Throws `not-found`; `conflict` where they share none. */
export const comparedSessions = (context: Context, firstId: string, secondId: string): Result<'agreement.compare'> =>
  compared(context, firstId, judgedIn(context, secondId));

export const compareSessionsOfLibrary: Handler<'agreement.compare'> = (context, { firstId, secondId }) => {
  if (firstId === secondId) {
    throw new ProblemError('conflict', 'sameSession');
  }
  return comparedSessions(context, firstId, secondId);
};

export const compareWithFile: Handler<'agreement.compareFile'> = (context, { sessionId, name, text }) => {
  findSession(context.library().reading, sessionId);
  const review = reviewOfText(text, name, context);
  return compared(context, sessionId, {
    review,
    from: context.catalogue(review.rubric?.version ?? firstRubricVersion),
  });
};
