/** Documents of a review in every format, as bytes. */
export { documentToPdf } from './pdf.ts';
export { type ReviewDocumentRequest, renderDocument, renderReviewDocument } from './renderReviewDocument.ts';
