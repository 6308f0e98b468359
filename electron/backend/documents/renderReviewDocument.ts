import { type RacksideDocument, toHtml, toMarkdown, toText } from '../../../engine/document/index.ts';
import type { Catalogue } from '../../../engine/exercises/index.ts';
import { filmingCard } from '../../../engine/film/index.ts';
import { gradeSession } from '../../../engine/grading/index.ts';
import { type LetterStyle, planLetter, writeLetter } from '../../../engine/letter/index.ts';
import type { Review } from '../../../engine/review/index.ts';
import { sheetCsv, sheetWebVtt, writeSheet } from '../../../engine/sheet/index.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { DocumentFormat, DocumentKind } from '../../contract/requests.ts';
import { documentToPdf } from './pdf.ts';

export type ReviewDocumentRequest = {
  readonly review: Review;
  readonly catalogue: Catalogue;
  readonly document: DocumentKind;
  readonly format: DocumentFormat;
  /** Keeps the timed notes (`vtt`) to one clip; other formats are always of the whole session. */
  readonly clipId?: string;
  /** How the letter is written; full and plain without it. */
  readonly style?: LetterStyle;
  /** The trainee's sessions before, oldest first: what the letter compares with. */
  readonly earlier?: readonly Review[];
};

const encode = (words: string): Uint8Array => new TextEncoder().encode(words);

function documentOf({ review, catalogue, document, style, earlier }: ReviewDocumentRequest): RacksideDocument {
  const grade = gradeSession(review, catalogue);
  switch (document) {
    case 'letter':
      return writeLetter(planLetter(review, grade, catalogue, earlier), style);
    case 'sheet':
      return writeSheet(review, grade, catalogue);
    case 'filmingCard':
      return filmingCard(
        review.entries.map(({ exercise }) => exercise),
        catalogue,
        review.session.date,
      );
  }
}

function timedNotes({ review, catalogue, clipId }: ReviewDocumentRequest): string {
  if (clipId === undefined) return sheetWebVtt(review, catalogue);
  const known = review.entries.some((entry) => entry.clips.some((clip) => clip.id === clipId));
  if (!known) {
    throw new ProblemError('not-found', 'The session has no such clip, so nothing was written; choose one of its own.');
  }
  return sheetWebVtt(review, catalogue, { clipId });
}

/** Writes a document as bytes. Throws `bad-request` for a format that only the sheet has. */
export async function renderDocument(document: RacksideDocument, format: DocumentFormat): Promise<Uint8Array> {
  switch (format) {
    case 'html':
      return encode(toHtml(document));
    case 'md':
      return encode(toMarkdown(document));
    case 'txt':
      return encode(toText(document));
    case 'pdf':
      return documentToPdf(document);
    case 'csv':
    case 'vtt':
      throw new ProblemError(
        'bad-request',
        `Only the sheet can be written as ${format}, so nothing was written; choose html, pdf, md or txt.`,
      );
  }
}

/**
 * Grades a review and writes its letter or sheet; the same review gives the same bytes. Throws a ProblemError:
 * `bad-request` for a letter as csv or vtt, `not-found` for a clip that the review doesn't hold.
 */
export async function renderReviewDocument(request: ReviewDocumentRequest): Promise<Uint8Array> {
  if (request.document === 'sheet' && request.format === 'csv') {
    return encode(sheetCsv(request.review, request.catalogue));
  }
  if (request.document === 'sheet' && request.format === 'vtt') return encode(timedNotes(request));
  return renderDocument(documentOf(request), request.format);
}
