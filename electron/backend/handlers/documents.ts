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
import { librarySource, namesOf, picturesOf, stillsOfSession } from '../handover/index.ts';
import { measuresOf } from '../measure/measuresOf.ts';
import { findSession, findTrainee, readReview } from '../store/index.ts';
import type { Handler } from './handler.ts';
import { sessionCatalogue } from './sessionCatalogue.ts';

type Asked = Omit<CheckedParams<'documents.write'>, 'path'>;

export const previewDocument: Handler<'documents.preview'> = async (context, { sessionId, document }) => {
  const bytes = await render(context, { sessionId, document, format: 'html', paper: 'a4', stills: false });
  return { html: new TextDecoder().decode(bytes) };
};

export const writeDocument: Handler<'documents.write'> = async (context, { path: asked, ...what }) => {
  const target = path.resolve(asked);
  assertOutsideLibrary(context.library().folder, target);
  const bytes = await render(context, what);
  await writeWhole(target, bytes);
  return { path: target, bytes: bytes.byteLength };
};

async function render(context: Context, asked: Asked): Promise<Uint8Array> {
  const { sessionId, document, format, clipId, sentVersion, paper } = asked;
  if (sentVersion !== undefined)
    return renderDocument(sentDocument(context, sessionId, sentVersion), format, { paper });
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  const { names } = findTrainee(reading, session.trainee_id);
  const stills = await stillsFor(context, asked);
  const pictures = picturesOf(stills);
  if (document === 'letter') {
    const { letter } = letterOfSession(context, sessionId, { names, stills });
    return renderDocument(letter.document, format, { paper, pictures });
  }
  const catalogue = translated(sessionCatalogue(context, sessionId), session.letter_language);
  const review = inItsWords(reviewWithName(readReview(reading, sessionId), names), catalogue);
  const extras = document === 'sheet' ? { measures: measuresOf(context, review), stills: namesOf(stills) } : {};
  const what = { review, catalogue, document, format, paper, extras, pictures };
  return renderReviewDocument({ ...what, ...(clipId !== undefined && { clipId }) });
}

const noStills: Awaited<ReturnType<typeof stillsOfSession>> = new Map();

async function stillsFor(context: Context, { sessionId, document, format, stills }: Asked) {
  const shows = (document === 'letter' || document === 'sheet') && (format === 'pdf' || format === 'html');
  if (!stills || !shows) return noStills;
  const work = { signal: new AbortController().signal, report: () => undefined };
  return stillsOfSession(await context.mediaTools(), librarySource(context, sessionId), work);
}
