import path from 'node:path';
import { translated } from '../../../engine/exercises/translated.ts';
import { reviewWithName } from '../../../engine/names/reviewWithName.ts';
import { inItsWords } from '../../../engine/wording/inItsWords.ts';
import { showsStills } from '../../contract/documents.ts';
import type { CheckedParams } from '../../contract/requests.ts';
import type { Context } from '../context/context.ts';
import { letterOfSession } from '../documents/letterOfSession.ts';
import { renderDocument, renderReviewDocument } from '../documents/renderReviewDocument.ts';
import { sentDocument } from '../documents/sentLetter.ts';
import { writeWhole } from '../files/writeWhole.ts';
import { namesOf, picturesOf, type SeenInClips, seenInClips } from '../handover/package/seenInClips.ts';
import { librarySource } from '../handover/source/librarySource.ts';
import { measuresOf } from '../measure/measuresOf.ts';
import { assertOutsideLibrary } from '../store/outsideLibrary.ts';
import { readReview } from '../store/readReview.ts';
import { findSession } from '../store/sessions.ts';
import { findTrainee } from '../store/trainees.ts';
import type { Handler } from './handler.ts';
import { sessionCatalogue } from './sessionCatalogue.ts';

type Asked = Omit<CheckedParams<'documents.write'>, 'path'>;

export const previewDocument: Handler<'documents.preview'> = async (context, { sessionId, document }) => {
  const asked = { sessionId, document, format: 'html', paper: 'a4', stills: false } as const;
  return { html: new TextDecoder().decode(await render(context, asked, noStills)) };
};

export const writeDocument: Handler<'documents.write'> = async (context, { path: asked, ...what }) => {
  const target = path.resolve(asked);
  assertOutsideLibrary(context.library().folder, target);
  const { stills, failed } = await seenFor(context, what);
  const bytes = await render(context, what, stills);
  await writeWhole(target, bytes);
  return { path: target, bytes: bytes.byteLength, ...(failed.length > 0 && { failed: [...failed] }) };
};

const noStills: SeenInClips['stills'] = new Map();

async function seenFor(
  context: Context,
  { sessionId, document, format, stills, sentVersion }: Asked,
): Promise<Pick<SeenInClips, 'stills' | 'failed'>> {
  if (!stills || sentVersion !== undefined || !showsStills(document, format)) return { stills: noStills, failed: [] };
  const work = { signal: new AbortController().signal, report: () => undefined };
  return seenInClips(await context.mediaTools(), librarySource(context, sessionId), { stills }, work);
}

async function render(context: Context, asked: Asked, stills: SeenInClips['stills']): Promise<Uint8Array> {
  const { sessionId, document, format, clipId, sentVersion, paper } = asked;
  if (sentVersion !== undefined)
    return renderDocument(sentDocument(context, sessionId, sentVersion), format, { paper });
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  const { names } = findTrainee(reading, session.trainee_id);
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
