import path from 'node:path';
import { type Edition, withFootage } from '../../../engine/edition/edition.ts';
import type { Review } from '../../../engine/review/review.ts';
import { renderReviewDocument } from '../../backend/documents/renderReviewDocument.ts';
import { writeWhole } from '../../backend/files/writeWhole.ts';
import { uniqueSlugs } from '../../backend/handover/package/fileNames.ts';
import { picturesOf, type SeenInClips, seenInClips } from '../../backend/handover/package/seenInClips.ts';
import { findMediaTools } from '../../backend/media/tools/mediaTools.ts';
import {
  type DocumentFormat,
  type DocumentKind,
  documentFileName,
  documentFormats,
  showsStills,
} from '../../contract/documents.ts';
import type { Paper, Undelivered } from '../../contract/handover.ts';
import type { FootageOutside } from '../options/footageOutside.ts';
import { showStep } from '../print/showStep.ts';
import { requireAllShown } from '../print/undelivered.ts';
import type { Host } from '../run/host.ts';
import { cancelledError, UsageError } from '../run/outcome.ts';
import { eachSession, requireAllSessions } from '../sources/eachSession.ts';
import { reviewClips } from '../sources/reviewClips.ts';
import { type EditionFlags, readEdition } from '../sources/reviewFile.ts';
import { withFolder } from './folders.ts';

export type ExportOptions = FileDocument & {
  readonly out?: string | undefined;
  readonly json?: true | undefined;
};

/**
 * Writes a document of one review file to `--out`, or to standard output; of several, each into the folder that `--out`
 * names, under a name of its own. Writes all that can be made, then throws one sentence if anything is missing.
 */
export async function exportDocument(host: Host, files: readonly string[], options: ExportOptions): Promise<void> {
  const [file, ...others] = files;
  if (file === undefined) throw new UsageError('Name a review file.');
  return others.length === 0 ? exportOne(host, file, options) : exportSeveral(host, files, options);
}

async function exportOne(host: Host, file: string, options: ExportOptions): Promise<void> {
  const { document, format, out, json } = options;
  if (format === 'pdf' && out === undefined && (json === true || host.printsToTerminal)) {
    throw new UsageError('A PDF is not text: name a file to write it to with --out FILE.');
  }
  const { bytes, failed } = await renderFile(host, file, options);
  if (host.signal.aborted) throw cancelledError();
  if (out === undefined) {
    host.print(json ? `${JSON.stringify({ document, format, content: new TextDecoder().decode(bytes) })}\n` : bytes);
  } else {
    await writeWhole(host.resolve(out), bytes);
    if (json) host.print(`${JSON.stringify({ document, format, file: host.resolve(out), bytes: bytes.length })}\n`);
    else host.say(`Wrote ${out} (${bytes.length} bytes).`);
  }
  requireAllShown(host, failed);
}

async function exportSeveral(host: Host, files: readonly string[], options: ExportOptions): Promise<void> {
  const { out } = options;
  if (out === undefined) throw new UsageError('Several sessions go into a folder: name it with --out DIR.');
  const folder = host.resolve(out);
  await withFolder(folder, () => exportInto(host, files, { ...options, out }, folder));
}

async function exportInto(
  host: Host,
  files: readonly string[],
  options: ExportOptions & { readonly out: string },
  folder: string,
): Promise<void> {
  const { out, document, format, json } = options;
  const nameOf = uniqueSlugs('session');
  const outcomes = await eachSession(host, files, async (file, each) => {
    const { bytes, review, failed } = await renderFile(each, file, options);
    const name = `${nameOf(`${documentFileName[document]} ${review.trainee.name} ${review.session.date}`)}.${format}`;
    const target = path.join(folder, name);
    await writeWhole(target, bytes);
    if (json === undefined) host.say(`Wrote ${path.join(out, name)} (${bytes.length} bytes).`);
    return { file: target, bytes: bytes.length, failed };
  });
  if (json) {
    const lines = outcomes.map((outcome) =>
      outcome.kind === 'done'
        ? { document, format, file: outcome.value.file, bytes: outcome.value.bytes }
        : { document, format, file: null, problem: outcome.sentence },
    );
    host.print(`${JSON.stringify(lines)}\n`);
  }
  requireAllSessions(host, outcomes);
  requireAllShown(
    host,
    outcomes.flatMap((outcome) => (outcome.kind === 'done' ? outcome.value.failed : [])),
  );
}

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
  readonly footageOutside?: FootageOutside;
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
  { document, format, stills, measured, footageOutside }: FileDocument,
): Promise<Seen> {
  const showing = stills === true && showsStills(document, format);
  const measuring = measured === true && document === 'sheet' && measuredFormats.has(format);
  if (!showing && !measuring) return { edition, stills: new Map(), failed: [] };
  const tools = await findMediaTools();
  const source = await reviewClips(host, tools, { file, edition, joints: false, footageOutside });
  const work = { signal: host.signal, report: showStep(host) };
  const seen = await seenInClips(tools, source, { stills: showing }, work);
  host.progress.clear();
  const { measures } = seen;
  return { ...seen, edition: measuring ? withFootage(edition, { facts: new Map(), measures }) : edition };
}
