import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Review } from '../../../engine/review/review.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { firstRubricVersion, judgingDataOf } from '../../backend/catalogue/loadCatalogue.ts';
import { readReviewFile } from '../../backend/reviews/readReviewFile.ts';
import type { Host } from '../run/host.ts';

/** A review and the judging data of its rubric, in English. */
export type Session = { readonly review: Review; readonly catalogue: Catalogue };

/** Reads and checks a review file. Throws a problem with one sentence. */
export async function readSession(host: Host, file: string): Promise<Session> {
  const judging = judgingDataOf(host.appFolder);
  const review = await readReviewFile(host.resolve(file), judging);
  return { review, catalogue: judging.catalogue(review.rubric?.version ?? firstRubricVersion) };
}

/** Reads the trainee's earlier sessions: oldest first, judged under the rubric of `catalogue`. */
export async function readEarlier(
  host: Host,
  files: readonly string[],
  catalogue: Catalogue,
): Promise<readonly Review[]> {
  const reviews = await Promise.all(
    files.map(async (file) => {
      const { review, catalogue: from } = await readSession(host, file);
      return reviewUnder(review, { from, to: catalogue });
    }),
  );
  return reviews.sort((one, other) => one.session.date.localeCompare(other.session.date));
}
