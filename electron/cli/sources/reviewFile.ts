import { type Edition, editionOf } from '../../../engine/edition/edition.ts';
import { withPlainIds } from '../../../engine/edition/plainIds.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { LetterStyle } from '../../../engine/letter/letter.ts';
import { nameFinder } from '../../../engine/names/findName.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import type { Review } from '../../../engine/review/review.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { catalogueUnder, firstRubricVersion, judgingDataOf } from '../../backend/catalogue/loadCatalogue.ts';
import { readReviewFile } from '../../backend/reviews/readReviewFile.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { UnsureNames } from '../options/documentOptions.ts';
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
  /** What becomes of words that may be the hidden name or not; without it, they are refused. */
  readonly unsureNames?: UnsureNames | undefined;
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

/** The edition of a review that is at hand. Reads the earlier sessions that `flags` name. Throws `conflict` for words that may be a hidden name. */
export async function editionOfSession(
  host: Host,
  { review, catalogue }: Session,
  { length = 'full', tone = 'plain', language = 'en', names = 'full', unsureNames, earlier = [] }: EditionFlags,
): Promise<Edition> {
  const before = await readEarlier(host, earlier, catalogue);
  const find = nameFinder(review.trainee.name, names);
  const source = {
    ...{ catalogue, names, earlier: before, style: { length, tone, language } },
    review: withPlainIds(review, (id) => find(id, 'fileName').length > 0),
  };
  const edition = editionOf(source);
  const { nameDoubts } = edition;
  if (nameDoubts.length === 0) return edition;
  if (unsureNames === undefined) throw unsure(nameDoubts);
  const is = unsureNames === 'hide' ? 'name' : 'noName';
  return editionOf({ ...source, nameDecisions: nameDoubts.map((doubt) => ({ ...doubt, is })) });
}

const mostQuoted = 5;

/** Says which words stand in the way, with a few of those around each. */
function unsure(doubts: Edition['nameDoubts']): ProblemError {
  const quoted = doubts
    .slice(0, mostQuoted)
    .map(({ before, word, after }) => `“${before.slice(-12)}[${word}]${after.slice(0, 12)}”`);
  const more = doubts.length > mostQuoted ? `, and ${doubts.length - mostQuoted} more` : '';
  return ProblemError.inWords(
    'conflict',
    `${doubts.length} ${doubts.length === 1 ? 'word' : 'words'} may be the hidden name or not, so nothing was written: ${quoted.join(', ')}${more}; change the review, or say --unsure-names hide or keep.`,
  );
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
