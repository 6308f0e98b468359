import { randomUUID } from 'node:crypto';
import { deliverHandover } from '../../backend/handover/package/deliverHandover.ts';
import { fileSource } from '../../backend/handover/source/fileSource.ts';
import { findMediaTools, type MediaTools } from '../../backend/media/tools/mediaTools.ts';
import type { HandoverOptions } from '../../contract/handover.ts';
import type { HandoverLine } from '../library/handOverSessions.ts';
import type { Host } from '../run/host.ts';
import { eachSession } from '../sources/eachSession.ts';
import { type EditionFlags, readEdition } from '../sources/reviewFile.ts';

/** Where and how review files are handed over. */
export type FileHandover = {
  readonly folder: string;
  readonly edition: EditionFlags;
  /** Measures the joints besides the disc: far slower. */
  readonly joints: boolean;
  readonly options: HandoverOptions;
};

/**
 * Hands review files over, one after the other; of several, one that fails keeps none of the others back. Throws what is
 * wrong with a single file, and `cancelled`.
 */
export async function handOverFiles(
  host: Host,
  files: readonly string[],
  handover: FileHandover,
): Promise<readonly HandoverLine[]> {
  const tools = await findMediaTools();
  const [file, ...others] = files;
  if (file !== undefined && others.length === 0) return [await handOverFile(host, file, tools, handover)];
  const outcomes = await eachSession(host, files, (each, its) => handOverFile(its, each, tools, handover));
  return outcomes.map((outcome) =>
    outcome.kind === 'done'
      ? outcome.value
      : { sessionId: null, path: null, version: null, failed: [], problem: outcome.sentence },
  );
}

async function handOverFile(
  host: Host,
  file: string,
  tools: MediaTools,
  { folder, edition: flags, joints, options }: FileHandover,
): Promise<HandoverLine> {
  const edition = await readEdition(host, file, flags);
  const source = fileSource(tools, { file: host.resolve(file), edition, joints });
  const { path, manifest } = await deliverHandover(
    tools,
    { source, options, version: 1, handedAt: new Date().toISOString() },
    { folder, workId: randomUUID() },
    { signal: host.signal, report: host.progress.show },
  );
  return { sessionId: null, path, version: 1, failed: manifest.failed, problem: '' };
}
