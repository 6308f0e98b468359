import { existsSync } from 'node:fs';
import { mkdir, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { ProblemError } from '../../../contract/reply.ts';
import { makeFolder, removeEmptyFolders } from '../../files/makeFolder.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import type { HandoverWork } from '../source/handoverSource.ts';
import { fileSlug } from './fileNames.ts';
import { zipFiles } from './handoverZip.ts';
import { type Manifest, manifestName } from './manifest.ts';
import { type HandoverOrder, writeHandover } from './writeHandover.ts';

/** A handover that lies where it was asked for. */
export type Delivered = {
  /** The folder or the zip. */
  readonly path: string;
  readonly bytes: number;
  readonly manifest: Manifest;
};

export type DeliveryTarget = {
  /** Folder that the handover's own folder or zip comes into; made when it isn't there. */
  readonly folder: string;
  /** Names what is unfinished, so that the same work begun anew finds it. */
  readonly workId: string;
};

/**
 * Hands a session over into a folder: written beside its place under a name that begins with a dot, and renamed when it
 * is whole. Nothing that is there is ever replaced. `beforeNamed` is done with the whole folder before it gets its name, and
 * what it throws takes all of it back. Throws `cancelled`, `disk`, or what keeps a document from being written.
 */
export async function deliverHandover(
  tools: MediaTools,
  order: HandoverOrder,
  { folder, workId }: DeliveryTarget,
  work: HandoverWork,
  beforeNamed: (unfinished: string, manifest: Manifest) => Promise<void> = async () => undefined,
): Promise<Delivered> {
  const unfinished = path.join(folder, `.unfinished-${workId}`);
  const unfinishedZip = `${unfinished}.zip`;
  const remove = async () => {
    await rm(unfinished, { recursive: true, force: true });
    await rm(unfinishedZip, { force: true });
  };
  let made: string | null = null;
  try {
    made = makeFolder(folder);
    await remove();
    await mkdir(unfinished);
    const manifest = await writeHandover(tools, unfinished, order, work);
    const names = [...manifest.files.map(({ name }) => name), manifestName];
    const { zip } = order.options;
    if (zip) await zipFiles(unfinished, names, unfinishedZip, { at: order.handedAt, signal: work.signal });
    await beforeNamed(unfinished, manifest);
    const target = freePath(folder, nameOf(order), zip ? '.zip' : '');
    await rename(zip ? unfinishedZip : unfinished, target);
    const bytes = zip ? (await stat(target)).size : manifest.files.reduce((sum, file) => sum + file.bytes, 0);
    await remove();
    return { path: target, bytes, manifest };
  } catch (error) {
    await remove().catch(() => undefined);
    if (made !== null) await removeEmptyFolders(folder, made);
    if (error instanceof ProblemError) throw error;
    if (work.signal.aborted) throw new ProblemError('cancelled', 'cancelled');
    throw onDisk(folder, error);
  }
}

/** What a handover's folder is called: day, trainee as they want to be named, and from the second version on which. */
function nameOf({ source, version }: HandoverOrder): string {
  const { trainee, session } = source.edition.review;
  return [session.date, fileSlug(trainee.name, 'trainee'), ...(version > 1 ? [`v${version}`] : [])].join('-');
}

function freePath(folder: string, name: string, ending: string): string {
  let target = path.join(folder, `${name}${ending}`);
  for (let count = 2; existsSync(target); count += 1) target = path.join(folder, `${name}-${count}${ending}`);
  return target;
}

function onDisk(folder: string, cause: unknown): unknown {
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
  if (!/^E[A-Z]+$/.test(code)) return cause;
  return new ProblemError('disk', 'folderNotWritten', { folder: path.basename(folder) }, { cause });
}
