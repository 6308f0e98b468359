import { type Edition, editionOf, withFootage } from '../../../engine/edition/edition.ts';
import type { Language } from '../../../engine/language/language.ts';
import type { LetterStyle } from '../../../engine/letter/style.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import type { Review } from '../../../engine/review/review.ts';
import { renderReviewDocument } from '../../backend/documents/renderReviewDocument.ts';
import { picturesOf, type SeenInClips, seenInClips } from '../../backend/handover/package/seenInClips.ts';
import { findMediaTools } from '../../backend/media/tools/mediaTools.ts';
import { type DocumentFormat, type DocumentKind, documentFormats, showsStills } from '../../contract/documents.ts';
import type { Paper, Undelivered } from '../../contract/handover.ts';
import type { Host } from '../run/host.ts';
import { openReviewFile } from '../sources/openReviewFile.ts';
import { readEarlier, readSession } from '../sources/readSession.ts';

/** Which document of a review file is written, and how. */
export type FileDocument = {
  readonly document: DocumentKind;
  readonly format: DocumentFormat;
  readonly clip?: string | undefined;
  readonly language: Language;
  readonly style?: LetterStyle;
  readonly paper: Paper;
  /** How the trainee is named; in full without it. */
  readonly names?: NameMode | undefined;
  /** Whether the clips are measured, for what the sheet tells of it. */
  readonly measured?: true | undefined;
  /** Whether the remarks are shown as pictures, where the document has room for them. */
  readonly stills?: true | undefined;
  /** Files of the trainee's earlier sessions. */
  readonly earlier?: readonly string[] | undefined;
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
  const { edition, stills, failed } = await editionOfFile(host, file, wanted);
  const bytes = await renderReviewDocument({
    ...{ edition, document, format, paper, stills },
    pictures: picturesOf(stills),
    ...(clip === undefined ? {} : { clipId: clip }),
  });
  return { bytes, review: edition.review, failed };
}

/** Formats of the sheet that tell measures. */
const measuredFormats: ReadonlySet<DocumentFormat> = new Set([...documentFormats, 'json']);

type Seen = Pick<SeenInClips, 'stills' | 'failed'> & { readonly edition: Edition };

/** The edition of a review file. Its clips are opened only if the document has use for what they show. */
async function editionOfFile(
  host: Host,
  file: string,
  { document, format, language, names = 'full', earlier = [], ...asked }: FileDocument,
): Promise<Seen> {
  const style: LetterStyle = asked.style ?? { length: 'full', tone: 'plain', language };
  const showing = asked.stills === true && showsStills(document, format);
  const measuring = asked.measured === true && document === 'sheet' && measuredFormats.has(format);
  if (!showing && !measuring) {
    const { review, catalogue } = await readSession(host, file);
    const before = await readEarlier(host, earlier, catalogue);
    const edition = editionOf({ review, catalogue, style, names, earlier: before });
    return { edition, stills: new Map(), failed: [] };
  }
  const tools = await findMediaTools();
  const source = await openReviewFile(host, tools, file, { ...style, names, earlier, joints: false });
  const work = { signal: host.signal, report: host.progress.show };
  const { measures, stills, failed } = await seenInClips(tools, source, { stills: showing }, work);
  host.progress.clear();
  const edition = measuring ? withFootage(source.edition, { facts: new Map(), measures }) : source.edition;
  return { edition, stills, failed };
}
