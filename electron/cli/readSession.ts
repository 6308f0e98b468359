import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { Review } from '../../engine/review/review.ts';
import { firstRubricVersion, judgingDataOf } from '../backend/catalogue/loadCatalogue.ts';
import { readReviewFile } from '../backend/reviews/readReviewFile.ts';
import type { Host } from './host.ts';

export type Session = { readonly review: Review; readonly catalogue: Catalogue };

/** A review file the person named, checked, with the judging data of its rubric. Throws a problem with one sentence. */
export async function readSession(host: Host, file: string): Promise<Session> {
  const judging = judgingDataOf(host.appFolder);
  const review = await readReviewFile(host.resolve(file), judging);
  return { review, catalogue: judging.catalogue(review.rubric?.version ?? firstRubricVersion) };
}
