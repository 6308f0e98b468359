import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { writeWhole } from '../../backend/files/writeWhole.ts';
import { uniqueSlugs } from '../../backend/handover/package/fileNames.ts';
import { documentFileName } from '../../contract/documents.ts';
import type { Host } from '../run/host.ts';
import { cancelledError, UsageError } from '../run/outcome.ts';
import { eachSession } from '../sources/eachSession.ts';
import { type FileDocument, renderFile } from './renderFile.ts';

export type ExportOptions = FileDocument & {
  readonly out?: string | undefined;
  readonly json?: true | undefined;
};

/**
 * Writes a document of one review file to `--out`, or to standard output; of several, each into the folder that `--out`
 * names, under a name of its own.
 */
export async function exportDocument(host: Host, files: readonly string[], options: ExportOptions): Promise<void> {
  const [file, ...others] = files;
  if (file === undefined) throw new UsageError('Say which review file.');
  if (others.length === 0) return exportOne(host, file, options);
  const { out, document, format, json } = options;
  if (out === undefined) throw new UsageError('Several sessions go into a folder: say which with --out DIR.');
  const folder = host.resolve(out);
  await mkdir(folder, { recursive: true });
  const nameOf = uniqueSlugs('session');
  await eachSession(host, files, async (each) => {
    const { bytes, review } = await renderFile(host, each, options);
    const name = `${nameOf(`${documentFileName[document]} ${review.trainee.name} ${review.session.date}`)}.${format}`;
    const target = path.join(folder, name);
    await writeWhole(target, bytes);
    if (json) host.print(`${JSON.stringify({ document, format, file: target, bytes: bytes.length })}\n`);
    else host.say(`Wrote ${path.join(out, name)} (${bytes.length} bytes).`);
  });
}

async function exportOne(host: Host, file: string, options: ExportOptions): Promise<void> {
  const { document, format, out, json } = options;
  if (format === 'pdf' && out === undefined && (json === true || process.stdout.isTTY)) {
    throw new UsageError('A PDF is not text: name a file to write it to with --out FILE.');
  }
  const { bytes } = await renderFile(host, file, options);
  if (host.signal.aborted) throw cancelledError();
  if (out === undefined) {
    host.print(json ? `${JSON.stringify({ document, format, content: new TextDecoder().decode(bytes) })}\n` : bytes);
    return;
  }
  await writeWhole(host.resolve(out), bytes);
  if (json) host.print(`${JSON.stringify({ document, format, file: host.resolve(out), bytes: bytes.length })}\n`);
  else host.say(`Wrote ${out} (${bytes.length} bytes).`);
}
