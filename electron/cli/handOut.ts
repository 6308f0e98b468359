import { reviewWithName } from '../../engine/handover/reviewWithName.ts';
import type { NameMode } from '../../engine/handover/shownName.ts';
import { inItsWords, type Language, translated } from '../../engine/language/index.ts';
import type { LetterStyle } from '../../engine/letter/index.ts';
import { reviewUnder } from '../../engine/review/index.ts';
import { type Paper, renderReviewDocument } from '../backend/documents/index.ts';
import { writeWhole } from '../backend/files/writeWhole.ts';
import type { DocumentFormat, DocumentKind } from '../contract/documents.ts';
import { cancelledError } from './cancelled.ts';
import type { Host } from './host.ts';
import { UsageError } from './outcome.ts';
import { readSession } from './readSession.ts';

export type HandOutOptions = {
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
  /** Files of the trainee's earlier sessions. */
  readonly earlier?: readonly string[] | undefined;
};

/** Writes a document of a review file to `--out`, or to standard output. */
export async function handOut(host: Host, file: string, options: HandOutOptions): Promise<void> {
  const { document, format, out, json } = options;
  if (format === 'pdf' && out === undefined && (json === true || process.stdout.isTTY)) {
    throw new UsageError('A PDF is no text: say where to write it with --out FILE.');
  }
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
  });
  if (host.signal.aborted) throw cancelledError();
  if (out === undefined) {
    host.print(json ? `${JSON.stringify({ document, format, content: new TextDecoder().decode(bytes) })}\n` : bytes);
    return;
  }
  await writeWhole(host.resolve(out), bytes);
  if (json) host.print(`${JSON.stringify({ document, format, file: host.resolve(out), bytes: bytes.length })}\n`);
  else host.say(`Wrote ${out} (${bytes.length} bytes).`);
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
