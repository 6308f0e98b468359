import { annotationJson } from '../../../engine/annotation/annotationPage.ts';
import type { RacksideDocument } from '../../../engine/document/document.ts';
import { type HtmlLook, toHtml } from '../../../engine/document/toHtml.ts';
import { toMarkdown } from '../../../engine/document/toMarkdown.ts';
import { toText } from '../../../engine/document/toText.ts';
import type { Edition } from '../../../engine/edition/edition.ts';
import type { Stills } from '../../../engine/letter/letter.ts';
import { sheetSubRip, sheetWebVtt } from '../../../engine/notes/noteFiles.ts';
import { sheetCsv } from '../../../engine/sheet/csv.ts';
import type { DocumentFormat, DocumentKind } from '../../contract/documents.ts';
import { ProblemError } from '../../contract/reply.ts';
import { htmlFaces } from './htmlFaces.ts';
import { documentToPdf, documentWords, type PdfOptions } from './pdf/documentToPdf.ts';
import { withPicturesInside } from './pdf/pictureFiles.ts';

/** Paper of a PDF, scheme of a page; pictures go into PDF and HTML, while Markdown links to their files. */
export type RenderOptions = PdfOptions & Pick<HtmlLook, 'scheme'>;

export type ReviewDocumentRequest = RenderOptions & {
  readonly edition: Edition;
  readonly document: DocumentKind;
  readonly format: DocumentFormat;
  /** Keeps the timed notes (`vtt`, `srt`) to one clip; other formats are always of the whole session. */
  readonly clipId?: string;
  /** Stills of flags, beside the letter's priorities and at the end of the sheet. */
  readonly stills?: Stills;
};

const encode = (words: string): Uint8Array => new TextEncoder().encode(words);

function documentOf({ edition, document, stills }: ReviewDocumentRequest): RacksideDocument {
  switch (document) {
    case 'letter':
      return edition.letter(stills).document;
    case 'sheet':
      return edition.sheet('full', stills);
    case 'shortSheet':
      return edition.sheet('short');
    case 'breakdown':
      return edition.breakdown();
    case 'filmingCard':
      return edition.filmingCard();
  }
}

function timedNotes({ edition, clipId }: ReviewDocumentRequest, write: typeof sheetWebVtt): string {
  const { review, catalogue } = edition;
  if (clipId === undefined) return write(review, catalogue);
  const known = review.entries.some((entry) => entry.clips.some((clip) => clip.id === clipId));
  if (!known) {
    throw new ProblemError('not-found', 'noSuchClip');
  }
  return write(review, catalogue, { clipId });
}

/** The sheet in a format of its own; null in those that every document has. */
function sheetText(request: ReviewDocumentRequest): string | null {
  const { edition, stills } = request;
  switch (request.format) {
    case 'csv':
      return sheetCsv(edition.review, edition.catalogue);
    case 'vtt':
      return timedNotes(request, sheetWebVtt);
    case 'srt':
      return timedNotes(request, sheetSubRip);
    case 'json':
      return edition.sheetJson(stills);
    case 'jsonld':
      return annotationJson(edition.review, edition.catalogue);
    default:
      return null;
  }
}

/** The document as one HTML page with its pictures and faces inside. */
export function documentToHtml(document: RacksideDocument, { pictures = new Map(), scheme }: RenderOptions): string {
  const { light, strong } = documentWords(document);
  return toHtml(withPicturesInside(document, pictures), {
    faces: htmlFaces(light + strong),
    ...(scheme && { scheme }),
  });
}

/** Writes a document as bytes. Throws `bad-request` for a format that only the sheet has. */
export async function renderDocument(
  document: RacksideDocument,
  format: DocumentFormat,
  options: RenderOptions = {},
): Promise<Uint8Array> {
  switch (format) {
    case 'html':
      return encode(documentToHtml(document, options));
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
      throw new ProblemError('bad-request', 'onlySheetFormat', { format });
  }
}

/**
 * Writes one document of an edition; the same edition gives the same bytes. Throws a ProblemError: `bad-request` for a
 * letter in a format of the sheet's own, `not-found` for a clip that the review doesn't hold.
 */
export async function renderReviewDocument(request: ReviewDocumentRequest): Promise<Uint8Array> {
  const text = request.document === 'sheet' ? sheetText(request) : null;
  return text === null ? renderDocument(documentOf(request), request.format, request) : encode(text);
}
