import path from 'node:path';
import { type Edition, withFootage } from '../../../engine/edition/edition.ts';
import { onSectionClocks } from '../../../engine/edition/sectionClock.ts';
import { showsStills } from '../../contract/documents.ts';
import type { CheckedParams } from '../../contract/requests.ts';
import type { Context } from '../context/context.ts';
import { editionOfSession } from '../documents/editionOfSession.ts';
import { assertNamesClear } from '../documents/nameDoubts.ts';
import { renderDocument, renderReviewDocument } from '../documents/renderReviewDocument.ts';
import { sentDocument } from '../documents/sentLetter.ts';
import { writeWhole } from '../files/writeWhole.ts';
import { picturesOf, type SeenInClips, seenInClips } from '../handover/package/seenInClips.ts';
import { librarySource } from '../handover/source/librarySource.ts';
import { measuresOf } from '../measure/measurementOfClip.ts';
import { assertOutsideLibrary } from '../store/folder.ts';
import type { Handler } from './handler.ts';

type Asked = Omit<CheckedParams<'documents.write'>, 'path'> & Pick<CheckedParams<'documents.preview'>, 'scheme'>;

export const previewDocument: Handler<'documents.preview'> = async (context, { sessionId, document, scheme }) => {
  const asked = { sessionId, document, scheme, format: 'html', paper: 'a4', stills: false } as const;
  const { bytes } = await render(context, asked, 'stays');
  return { html: new TextDecoder().decode(bytes) };
};

export const writeDocument: Handler<'documents.write'> = async (context, { path: asked, ...what }) => {
  const target = path.resolve(asked);
  assertOutsideLibrary(context.library().folder, target);
  const { bytes, failed } = await render(context, what, 'leaves');
  await writeWhole(target, bytes);
  return { path: target, bytes: bytes.byteLength, ...(failed.length > 0 && { failed: [...failed] }) };
};

type Rendered = { readonly bytes: Uint8Array; readonly failed: SeenInClips['failed'] };

async function render(context: Context, asked: Asked, goes: 'leaves' | 'stays'): Promise<Rendered> {
  const { sessionId, document, format, clipId, sentVersion, paper, scheme } = asked;
  if (sentVersion !== undefined) {
    const sent = sentDocument(context, sessionId, sentVersion);
    return { bytes: await renderDocument(sent, format, { paper }), failed: [] };
  }
  const { edition, stills, failed } = await whatToRender(context, asked);
  if (goes === 'leaves') assertNamesClear(context, sessionId, edition, 'none');
  const bytes = await renderReviewDocument({
    ...{ edition, document, format, paper, stills },
    pictures: picturesOf(stills),
    ...(clipId !== undefined && { clipId }),
    ...(scheme !== undefined && { scheme }),
  });
  return { bytes, failed };
}

/** The edition, with stills of its clips where the document shows them and they are wanted. */
async function whatToRender(
  context: Context,
  { sessionId, document, format, stills }: Asked,
): Promise<Pick<SeenInClips, 'stills' | 'failed'> & { readonly edition: Edition }> {
  if (stills && showsStills(document, format)) {
    const source = librarySource(context, sessionId, 'asWanted');
    const work = { signal: new AbortController().signal, report: () => undefined };
    return {
      edition: onSectionClocks(source.edition),
      ...(await seenInClips(await context.mediaTools(), source, { stills }, work)),
    };
  }
  const to = document === 'letter' ? 'writeLetter' : 'tellSheet';
  const { edition } = editionOfSession(context, sessionId, { names: 'asWanted', to, clocks: 'footage' });
  const measured =
    document === 'sheet'
      ? withFootage(edition, { facts: new Map(), measures: measuresOf(context, edition.review) })
      : edition;
  return { edition: onSectionClocks(measured), stills: new Map(), failed: [] };
}
