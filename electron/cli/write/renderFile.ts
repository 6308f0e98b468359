import { type Edition, withFootage } from '../../../engine/edition/edition.ts';
import type { Review } from '../../../engine/review/review.ts';
import { renderReviewDocument } from '../../backend/documents/renderReviewDocument.ts';
import { picturesOf, type SeenInClips, seenInClips } from '../../backend/handover/package/seenInClips.ts';
import { fileSource } from '../../backend/handover/source/fileSource.ts';
import { findMediaTools } from '../../backend/media/tools/mediaTools.ts';
import { type DocumentFormat, type DocumentKind, documentFormats, showsStills } from '../../contract/documents.ts';
import type { Paper, Undelivered } from '../../contract/handover.ts';
import type { Host } from '../run/host.ts';
import { type EditionFlags, readEdition } from '../sources/reviewFile.ts';

/** Which document of a review file to write, and how. */
export type FileDocument = EditionFlags & {
  readonly document: DocumentKind;
  readonly format: DocumentFormat;
  readonly clip?: string | undefined;
  readonly paper: Paper;
  /** Measures the clips, for the sheet. */
  readonly measured?: true | undefined;
  /** Shows the remarks as pictures, where the document has room for them. */
  readonly stills?: true | undefined;
};

/** A document's bytes, and what it is missing. */
export type RenderedFile = {
  readonly bytes: Uint8Array;
  /** The review, the trainee named as asked. */
  readonly review: Review;
  /** Clips that were asked for and could not be shown or measured. */
  readonly failed: readonly Undelivered[];
};

/** Makes a document of a review file. Throws a problem with one sentence. */
export async function renderFile(host: Host, file: string, wanted: FileDocument): Promise<RenderedFile> {
  const { document, format, clip, paper } = wanted;
  const read = await readEdition(host, file, wanted);
  const { edition, stills, failed } = await withClips(host, { file, edition: read }, wanted);
  const bytes = await renderReviewDocument({
    ...{ edition, document, format, paper, stills },
    pictures: picturesOf(stills),
    ...(clip === undefined ? {} : { clipId: clip }),
  });
  return { bytes, review: edition.review, failed };
}

/** Formats in which the sheet has measures. */
const measuredFormats: ReadonlySet<DocumentFormat> = new Set([...documentFormats, 'json']);

type Seen = Pick<SeenInClips, 'stills' | 'failed'> & { readonly edition: Edition };

/** The edition with what its clips show. They are opened only if the document has use for it. */
async function withClips(
  host: Host,
  { file, edition }: { readonly file: string; readonly edition: Edition },
  { document, format, stills, measured }: FileDocument,
): Promise<Seen> {
  const showing = stills === true && showsStills(document, format);
  const measuring = measured === true && document === 'sheet' && measuredFormats.has(format);
  if (!showing && !measuring) return { edition, stills: new Map(), failed: [] };
  const tools = await findMediaTools();
  const source = fileSource(tools, { file: host.resolve(file), edition, joints: false });
  const work = { signal: host.signal, report: host.progress.show };
  const seen = await seenInClips(tools, source, { stills: showing }, work);
  host.progress.clear();
  const { measures } = seen;
  return { ...seen, edition: measuring ? withFootage(edition, { facts: new Map(), measures }) : edition };
}
