import path from 'node:path';
import { writeWhole } from '../../backend/files/writeWhole.ts';
import { uniqueSlugs } from '../../backend/handover/package/fileNames.ts';
import { documentFileName } from '../../contract/documents.ts';
import { requireAllShown } from '../print/undelivered.ts';
import type { Host } from '../run/host.ts';
import { cancelledError, UsageError } from '../run/outcome.ts';
import { eachSession, requireAllSessions } from '../sources/eachSession.ts';
import { withFolder } from './folders.ts';
import { type FileDocument, renderFile } from './renderFile.ts';

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
  if (format === 'pdf' && out === undefined && (json === true || process.stdout.isTTY)) {
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
