import { existsSync } from 'node:fs';
import { chmod, mkdir, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { ProblemError } from '../../../contract/reply.ts';
import { flushFile, flushFolder, flushTree } from '../../files/flush.ts';
import { makeFolder, removeEmptyFolders } from '../../files/makeFolder.ts';
import { folderForOwner } from '../../files/ownerAlone.ts';
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
 * is whole and on the disk. Nothing that is there is ever replaced. `beforeNamed` is done with the whole folder before it
 * gets its name, and what it throws takes all of it back; afterwards `nameRecorded` can make up for a name that was never
 * given. Throws `cancelled`, `disk`, or what keeps a document from being written.
 */
export async function deliverHandover(
  tools: MediaTools,
  order: HandoverOrder,
  { folder, workId }: DeliveryTarget,
  work: HandoverWork,
  beforeNamed: (unfinished: string, delivered: Delivered) => Promise<void> = async () => undefined,
): Promise<Delivered> {
  const { unfinished, unfinishedZip, remove } = unfinishedIn(folder, workId);
  let made: string | null = null;
  let isRecorded = false;
  try {
    made = makeFolder(folder);
    await remove();
    await mkdir(unfinished, { mode: folderForOwner });
    const manifest = await writeHandover(tools, unfinished, order, work);
    const names = [...manifest.files.map(({ name }) => name), manifestName];
    const { zip } = order.options;
    if (zip) await zipFiles(unfinished, names, unfinishedZip, { at: order.handedAt, signal: work.signal });
    // Whole, it is as open as the folder that it was wanted in.
    if (!zip) await chmod(unfinished, (await stat(folder)).mode & 0o777).catch(() => undefined);
    if (zip) await flushFile(unfinishedZip);
    else await flushTree(unfinished);
    const target = freePath(folder, nameOf(order), zip ? '.zip' : '');
    const bytes = zip ? (await stat(unfinishedZip)).size : manifest.files.reduce((sum, file) => sum + file.bytes, 0);
    const delivered = { path: target, bytes, manifest };
    await beforeNamed(unfinished, delivered);
    isRecorded = true;
    await rename(zip ? unfinishedZip : unfinished, target);
    await flushFolder(folder);
    await remove();
    return delivered;
  } catch (error) {
    if (isRecorded) throw onDisk(folder, error);
    await remove().catch(() => undefined);
    if (made !== null) await removeEmptyFolders(folder, made);
    if (error instanceof ProblemError) throw error;
    if (work.signal.aborted) throw new ProblemError('cancelled', 'cancelled');
    throw onDisk(folder, error);
  }
}

/**
 * Gives a handover that was recorded as lying at `target` its name, where it has none yet because the program ended in
 * between. False when it lies nowhere any more.
 */
export async function nameRecorded(target: string, workId: string): Promise<boolean> {
  const folder = path.dirname(target);
  const { unfinished, unfinishedZip, remove } = unfinishedIn(folder, workId);
  if (!existsSync(target)) {
    const whole = path.extname(target) === '.zip' ? unfinishedZip : unfinished;
    if (!existsSync(whole)) return false;
    await rename(whole, target);
    await flushFolder(folder);
  }
  await remove();
  return true;
}

/** Where a handover lies until it has its name. */
function unfinishedIn(folder: string, workId: string) {
  const unfinished = path.join(folder, `.unfinished-${workId}`);
  const unfinishedZip = `${unfinished}.zip`;
  const remove = async () => {
    await rm(unfinished, { recursive: true, force: true });
    await rm(unfinishedZip, { force: true });
  };
  return { unfinished, unfinishedZip, remove };
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
