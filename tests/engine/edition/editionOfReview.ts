import { type Edition, editionOf } from '../../../engine/edition/edition.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Review } from '../../../engine/review/review.ts';
import { catalogue as english } from '../letter/sample.ts';

/** The edition of a review in full, in the language of a catalogue, which is English unless another is given. */
export function editionOfReview(review: Review, catalogue: Catalogue = english): Edition {
  const style = { length: 'full', tone: 'plain', language: catalogue.language ?? 'en' } as const;
  return editionOf({ review, catalogue, style, names: 'full' });
}
