import { type Edition, editionOf } from '../../../engine/edition/edition.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { LetterStyle } from '../../../engine/letter/letter.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import type { Review } from '../../../engine/review/review.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { catalogueUnder, firstRubricVersion, judgingDataOf } from '../../backend/catalogue/loadCatalogue.ts';
import { readReviewFile } from '../../backend/reviews/readReviewFile.ts';
import type { Host } from '../run/host.ts';
import { readRubric } from './fromCatalogue.ts';

/** A review and the judging data of its rubric, in English. */
export type Session = { readonly review: Review; readonly catalogue: Catalogue };

/** Reads and checks a review file. Throws a problem with one sentence. */
export async function readSession(host: Host, file: string): Promise<Session> {
  const judging = judgingDataOf(host.appFolder);
  const review = await readReviewFile(host.resolve(file), judging);
  return { review, catalogue: judging.catalogue(review.rubric?.version ?? firstRubricVersion) };
}

/** How a review file is read, as options say it: in full, plain and in English without them. */
export type EditionFlags = Partial<LetterStyle> & {
  /** How the trainee is named; in full without it. */
  readonly names?: NameMode | undefined;
  /** Files of the trainee's earlier sessions. */
  readonly earlier?: readonly string[] | undefined;
  /** A version or a rubric file to judge by; the review's own without it. */
  readonly rubric?: string | undefined;
};

/** Reads a review file as the edition that every document of it is made from. Throws a problem with one sentence. */
export async function readEdition(host: Host, file: string, flags: EditionFlags = {}): Promise<Edition> {
  const session = await readSession(host, file);
  const judged = flags.rubric === undefined ? session : await sessionUnder(host, session, flags.rubric);
  return editionOfSession(host, judged, flags);
}

/** A session as another rubric judges it, named by its version or its file; the review's file stays as it is. */
async function sessionUnder(host: Host, { review, catalogue: from }: Session, rubric: string): Promise<Session> {
  const to = catalogueUnder(host.appFolder, await readRubric(host, rubric));
  return { review: reviewUnder(review, { from, to }), catalogue: to };
}

/** The edition of a review that is at hand. Reads the earlier sessions that `flags` name. */
export async function editionOfSession(
  host: Host,
  { review, catalogue }: Session,
  { length = 'full', tone = 'plain', language = 'en', names = 'full', earlier = [] }: EditionFlags,
): Promise<Edition> {
  const before = await readEarlier(host, earlier, catalogue);
  return editionOf({ review, catalogue, style: { length, tone, language }, names, earlier: before });
}

/** Reads the trainee's earlier sessions: oldest first, judged under the rubric of `catalogue`. */
async function readEarlier(host: Host, files: readonly string[], catalogue: Catalogue): Promise<readonly Review[]> {
  const reviews = await Promise.all(
    files.map(async (file) => {
      const { review, catalogue: from } = await readSession(host, file);
      return reviewUnder(review, { from, to: catalogue });
    }),
  );
  return reviews.sort((one, other) => one.session.date.localeCompare(other.session.date));
}
