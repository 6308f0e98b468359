import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { inItsWords, translated } from '../../engine/exercises/translated.ts';
import type { Language } from '../../engine/language/language.ts';
import type { LetterStyle } from '../../engine/letter/writeLetter.ts';
import { reviewWithName } from '../../engine/names/reviewWithName.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import type { Review } from '../../engine/review/review.ts';
import { reviewUnder } from '../../engine/review/reviewUnder.ts';
import { type ReviewDocumentRequest, renderReviewDocument } from '../backend/documents/renderReviewDocument.ts';
import { writeWhole } from '../backend/files/writeWhole.ts';
import { uniqueSlugs } from '../backend/handover/fileNames.ts';
import { namesOf, picturesOf } from '../backend/handover/seenInClips.ts';
import {
  type DocumentFormat,
  type DocumentKind,
  documentFileName,
  documentFormats,
  showsStills,
} from '../contract/documents.ts';
import type { Paper } from '../contract/handover.ts';
import { cancelledError } from './cancelled.ts';
import { eachSession } from './eachSession.ts';
import type { Host } from './host.ts';
import { UsageError } from './outcome.ts';
import { readSession } from './readSession.ts';
import { seenInFile } from './seenInFile.ts';

export type ExportOptions = {
  readonly document: DocumentKind;
  readonly format: DocumentFormat;
  readonly clip?: string | undefined;
  readonly out?: string | undefined;
  readonly json?: true | undefined;
  readonly language: Language;
  readonly style?: LetterStyle;
  readonly paper: Paper;
  /** How the trainee is named; in full without it. */
  readonly names?: NameMode | undefined;
  /** Whether the clips are measured, for what the sheet tells of it. */
  readonly measured?: boolean | undefined;
  /** Whether the document shows the remarks as pictures, where it has room for them. */
  readonly stills?: boolean | undefined;
  /** Files of the trainee's earlier sessions. */
  readonly earlier?: readonly string[] | undefined;
};

type Rendered = { readonly bytes: Uint8Array; readonly review: Review };

/**
 * Writes a document of one review file to `--out`, or to standard output; of several, each into the folder that `--out`
 * names, under a name of its own.
 */
export async function exportDocument(host: Host, files: readonly string[], options: ExportOptions): Promise<void> {
  const [file, ...others] = files;
  if (file === undefined) throw new UsageError('Say which review file.');
  if (others.length === 0) return handOutOne(host, file, options);
  const { out, document, format, json } = options;
  if (out === undefined) throw new UsageError('Several sessions go into a folder: say which with --out DIR.');
  const folder = host.resolve(out);
  await mkdir(folder, { recursive: true });
  const nameOf = uniqueSlugs('session');
  await eachSession(host, files, async (each) => {
    const { bytes, review } = await rendered(host, each, options);
    const name = `${nameOf(`${documentFileName[document]} ${review.trainee.name} ${review.session.date}`)}.${format}`;
    const target = path.join(folder, name);
    await writeWhole(target, bytes);
    if (json) host.print(`${JSON.stringify({ document, format, file: target, bytes: bytes.length })}\n`);
    else host.say(`Wrote ${path.join(out, name)} (${bytes.length} bytes).`);
  });
}

async function handOutOne(host: Host, file: string, options: ExportOptions): Promise<void> {
  const { document, format, out, json } = options;
  if (format === 'pdf' && out === undefined && (json === true || process.stdout.isTTY)) {
    throw new UsageError('A PDF is no text: say where to write it with --out FILE.');
  }
  const { bytes } = await rendered(host, file, options);
  if (host.signal.aborted) throw cancelledError();
  if (out === undefined) {
    host.print(json ? `${JSON.stringify({ document, format, content: new TextDecoder().decode(bytes) })}\n` : bytes);
    return;
  }
  await writeWhole(host.resolve(out), bytes);
  if (json) host.print(`${JSON.stringify({ document, format, file: host.resolve(out), bytes: bytes.length })}\n`);
  else host.say(`Wrote ${out} (${bytes.length} bytes).`);
}

async function rendered(host: Host, file: string, options: ExportOptions): Promise<Rendered> {
  const { document, format } = options;
  const { review: read, catalogue: own } = await readSession(host, file);
  const review = options.names === undefined ? read : reviewWithName(read, options.names);
  const catalogue = translated(own, options.language);
  const earlier = await Promise.all(
    (options.earlier ?? []).map(async (name) => {
      const before = await readSession(host, name);
      return reviewUnder(before.review, { from: before.catalogue, to: own });
    }),
  );
  const bytes = await renderReviewDocument({
    review: inItsWords(review, catalogue),
    catalogue,
    ...(options.style === undefined ? {} : { style: options.style }),
    earlier: earlier.sort((a, b) => a.session.date.localeCompare(b.session.date)),
    document,
    format,
    paper: options.paper,
    ...(options.clip === undefined ? {} : { clipId: options.clip }),
    ...(await shownOf(host, file, options)),
  });
  return { bytes, review };
}

/** Formats of the sheet that tell measures. */
const measuredFormats: ReadonlySet<DocumentFormat> = new Set([...documentFormats, 'json']);

/** What the clips show beside the review: measures, pictures of remarks. They are opened only for what the document tells. */
async function shownOf(
  host: Host,
  file: string,
  { document, format, language, names, ...asked }: ExportOptions,
): Promise<Pick<ReviewDocumentRequest, 'extras' | 'stills' | 'pictures'>> {
  const wanted = asked.stills === true && showsStills(document, format);
  const measured = asked.measured === true && document === 'sheet' && measuredFormats.has(format);
  if (!wanted && !measured) return {};
  const { measures, stills } = await seenInFile(host, file, { language, names, stills: wanted });
  return { extras: { ...(measured && { measures }), stills: namesOf(stills) }, stills, pictures: picturesOf(stills) };
}

/** The format asked for: by name, else by the ending of the file to write, else Markdown. */
export function chooseFormat<F extends string>(
  formats: readonly F[],
  asked: F | undefined,
  out: string | undefined,
  usual: F,
): F {
  if (asked !== undefined) return asked;
  const ending = /\.([a-z]+)$/i.exec(out ?? '')?.[1]?.toLowerCase();
  return formats.find((format) => format === ending) ?? usual;
}
