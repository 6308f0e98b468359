import path from 'node:path';
import { translated } from '../../../engine/language/index.ts';
import type { CheckedParams } from '../../contract/requests.ts';
import type { Context } from '../context.ts';
import { renderDocument, renderReviewDocument } from '../documents/index.ts';
import { documentOfSession } from '../documents/letterOfSession.ts';
import { sentDocument } from '../documents/sentLetter.ts';
import { assertOutsideLibrary } from '../files/outsideLibrary.ts';
import { writeWhole } from '../files/writeWhole.ts';
import { findSession, readReview } from '../store/index.ts';
import type { Handler } from './handler.ts';
import { sessionCatalogue } from './sessionCatalogue.ts';

export const previewDocument: Handler<'documents.preview'> = async (context, { sessionId, document }) => {
  const bytes = await render(context, { sessionId, document, format: 'html' });
  return { html: new TextDecoder().decode(bytes) };
};

export const writeDocument: Handler<'documents.write'> = async (context, { path: asked, ...what }) => {
  const target = path.resolve(asked);
  assertOutsideLibrary(context.library().folder, target);
  const bytes = await render(context, what);
  await writeWhole(target, bytes);
  return { path: target, bytes: bytes.byteLength };
};

function render(
  context: Context,
  { sessionId, document, format, clipId, sentVersion }: Omit<CheckedParams<'documents.write'>, 'path'>,
): Promise<Uint8Array> {
  if (sentVersion !== undefined) return renderDocument(sentDocument(context, sessionId, sentVersion), format);
  if (document === 'letter') return renderDocument(documentOfSession(context, sessionId), format);
  const { reading } = context.library();
  const catalogue = translated(sessionCatalogue(context, sessionId), findSession(reading, sessionId).letter_language);
  const review = readReview(reading, sessionId);
  return renderReviewDocument({ review, catalogue, document, format, ...(clipId !== undefined && { clipId }) });
}
