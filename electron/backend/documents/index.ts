/** Documents of a review in every format, as bytes. */
export { documentToPdf, type PdfOptions } from './pdf.ts';
export { type PictureFiles, withPicturesInside } from './pictureFiles.ts';
export {
  type RenderOptions,
  type ReviewDocumentRequest,
  renderDocument,
  renderReviewDocument,
} from './renderReviewDocument.ts';
