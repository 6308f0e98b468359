import { annotationJson } from '../../../engine/annotation/annotationPage.ts';
import { writeBreakdown } from '../../../engine/breakdown/writeBreakdown.ts';
import type { RacksideDocument } from '../../../engine/document/document.ts';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { toMarkdown } from '../../../engine/document/toMarkdown.ts';
import { toText } from '../../../engine/document/toText.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import { filmingCard } from '../../../engine/film/filmingCard.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { letterDocument } from '../../../engine/letter/letter.ts';
import { planLetter } from '../../../engine/letter/planLetter.ts';
import type { LetterStyle, Stills } from '../../../engine/letter/style.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import type { Review } from '../../../engine/review/review.ts';
import { sheetCsv } from '../../../engine/sheet/sheetCsv.ts';
import type { SheetExtras } from '../../../engine/sheet/sheetExtras.ts';
import { sheetJson } from '../../../engine/sheet/sheetJson.ts';
import { sheetSubRip } from '../../../engine/sheet/sheetSubRip.ts';
import { sheetWebVtt } from '../../../engine/sheet/sheetWebVtt.ts';
import { writeSheet } from '../../../engine/sheet/writeSheet.ts';
import type { DocumentFormat, DocumentKind } from '../../contract/documents.ts';
import { ProblemError } from '../../contract/reply.ts';
import { documentToPdf, type PdfOptions } from './pdf/documentToPdf.ts';
import { withPicturesInside } from './pdf/pictureFiles.ts';

/** Paper of a PDF; pictures go into PDF and HTML, while Markdown links to their files. */
export type RenderOptions = PdfOptions;

export type ReviewDocumentRequest = RenderOptions & {
  readonly review: Review;
  readonly catalogue: Catalogue;
  readonly document: DocumentKind;
  readonly format: DocumentFormat;
  /** Keeps the timed notes (`vtt`, `srt`) to one clip; other formats are always of the whole session. */
  readonly clipId?: string;
  /** How the letter is written; full and plain without it. */
  readonly style?: LetterStyle;
  /** The trainee's sessions before, oldest first: what the letter compares with. */
  readonly earlier?: readonly Review[];
  /** What was measured, and the stills that lie beside the sheet. */
  readonly extras?: SheetExtras;
  /** Stills of flags, shown beside the letter's priorities. */
  readonly stills?: Stills;
};

const encode = (words: string): Uint8Array => new TextEncoder().encode(words);

function documentOf(request: ReviewDocumentRequest): RacksideDocument {
  const { review, catalogue, document, style, earlier, extras, stills } = request;
  const grade = gradeSession(review, catalogue);
  switch (document) {
    case 'letter':
      return letterDocument(writeLetter(planLetter(review, grade, catalogue, earlier), style, stills));
    case 'sheet':
      return writeSheet(review, grade, catalogue, extras);
    case 'shortSheet':
      return writeSheet(review, grade, catalogue, { length: 'short' });
    case 'breakdown':
      return writeBreakdown(review, grade, catalogue);
    case 'filmingCard':
      return filmingCard(
        review.entries.map(({ exercise }) => exercise),
        catalogue,
        review.session.date,
      );
  }
}

function timedNotes({ review, catalogue, clipId }: ReviewDocumentRequest, write: typeof sheetWebVtt): string {
  if (clipId === undefined) return write(review, catalogue);
  const known = review.entries.some((entry) => entry.clips.some((clip) => clip.id === clipId));
  if (!known) {
    throw new ProblemError('not-found', 'The session has no such clip, so nothing was written; choose one of its own.');
  }
  return write(review, catalogue, { clipId });
}

/** The sheet in a format of its own; null in those that every document has. */
function sheetText(request: ReviewDocumentRequest): string | null {
  const { review, catalogue, extras } = request;
  switch (request.format) {
    case 'csv':
      return sheetCsv(review, catalogue);
    case 'vtt':
      return timedNotes(request, sheetWebVtt);
    case 'srt':
      return timedNotes(request, sheetSubRip);
    case 'json':
      return sheetJson(review, gradeSession(review, catalogue), catalogue, extras);
    case 'jsonld':
      return annotationJson(review, catalogue);
    default:
      return null;
  }
}

/** Writes a document as bytes. Throws `bad-request` for a format that only the sheet has. */
export async function renderDocument(
  document: RacksideDocument,
  format: DocumentFormat,
  options: RenderOptions = {},
): Promise<Uint8Array> {
  switch (format) {
    case 'html':
      return encode(toHtml(withPicturesInside(document, options.pictures ?? new Map())));
    case 'md':
      return encode(toMarkdown(document));
    case 'txt':
      return encode(toText(document));
    case 'pdf':
      return documentToPdf(document, options);
    case 'csv':
    case 'vtt':
    case 'srt':
    case 'json':
    case 'jsonld':
      throw new ProblemError(
        'bad-request',
        `Only the sheet can be written as ${format}, so nothing was written; choose html, pdf, md or txt.`,
      );
  }
}

/**
 * Grades a review and writes one of its documents; the same review gives the same bytes. Throws a ProblemError:
 * `bad-request` for a letter in a format of the sheet's own, `not-found` for a clip that the review doesn't hold.
 */
export async function renderReviewDocument(request: ReviewDocumentRequest): Promise<Uint8Array> {
  const text = request.document === 'sheet' ? sheetText(request) : null;
  return text === null ? renderDocument(documentOf(request), request.format, request) : encode(text);
}
