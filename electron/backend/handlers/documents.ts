import path from 'node:path';
import { reviewWithName } from '../../../engine/handover/reviewWithName.ts';
import { inItsWords, translated } from '../../../engine/language/index.ts';
import type { CheckedParams } from '../../contract/requests.ts';
import type { Context } from '../context.ts';
import { renderDocument, renderReviewDocument } from '../documents/index.ts';
import { letterOfSession } from '../documents/letterOfSession.ts';
import { sentDocument } from '../documents/sentLetter.ts';
import { assertOutsideLibrary } from '../files/outsideLibrary.ts';
import { writeWhole } from '../files/writeWhole.ts';
import { measuresOf } from '../measure/measuresOf.ts';
import { findSession, findTrainee, readReview } from '../store/index.ts';
import type { Handler } from './handler.ts';
import { sessionCatalogue } from './sessionCatalogue.ts';

export const previewDocument: Handler<'documents.preview'> = async (context, { sessionId, document }) => {
  const bytes = await render(context, { sessionId, document, format: 'html', paper: 'a4' });
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
  { sessionId, document, format, clipId, sentVersion, paper }: Omit<CheckedParams<'documents.write'>, 'path'>,
): Promise<Uint8Array> {
  if (sentVersion !== undefined)
    return renderDocument(sentDocument(context, sessionId, sentVersion), format, { paper });
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  const { names } = findTrainee(reading, session.trainee_id);
  if (document === 'letter') {
    return renderDocument(letterOfSession(context, sessionId, { names }).letter.document, format, { paper });
  }
  const catalogue = translated(sessionCatalogue(context, sessionId), session.letter_language);
  const review = inItsWords(reviewWithName(readReview(reading, sessionId), names), catalogue);
  const extras = document === 'sheet' ? { measures: measuresOf(context, review) } : {};
  return renderReviewDocument({
    review,
    catalogue,
    document,
    format,
    paper,
    extras,
    ...(clipId !== undefined && { clipId }),
  });
}
