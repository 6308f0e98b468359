import { closeSync, openSync, readdirSync, realpathSync, rmSync } from 'node:fs';
import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import { makeFolder } from '../files/makeFolder.ts';
import { closeToOthers, fileForOwner } from '../files/ownerAlone.ts';
import { partSuffix } from '../files/writeWhole.ts';

/** Where things lie inside a library's folder. */
export type LibraryFolder = {
  readonly root: string;
  readonly database: string;
  readonly lock: string;
  readonly clips: string;
  readonly pictures: string;
  /** What coaches said over clips. */
  readonly sounds: string;
  readonly backups: string;
  /** What was handed over, without its clips: a zip each. */
  readonly handovers: string;
  /** What is only needed while something is made; emptied whenever the library is opened. */
  readonly temporary: string;
  /** What the app noted of itself, and the file before it. */
  readonly log: string;
  readonly oldLog: string;
};

/** The layout of the library in a folder; nothing is read or made. */
export function libraryFolder(root: string): LibraryFolder {
  const whole = path.resolve(root);
  return {
    root: whole,
    database: path.join(whole, 'rackside.sqlite'),
    lock: path.join(whole, 'rackside.lock'),
    clips: path.join(whole, 'clips'),
    pictures: path.join(whole, 'pictures'),
    sounds: path.join(whole, 'sounds'),
    backups: path.join(whole, 'backups'),
    handovers: path.join(whole, 'handovers'),
    temporary: path.join(whole, 'temporary'),
    log: path.join(whole, 'rackside.log'),
    oldLog: path.join(whole, 'rackside.old.log'),
  };
}

/** Pictures of a clip that is framed or trimmed, made when they are asked for, in a folder of their own. */
export const framedPicturesName = (clipId: string): string => `framed-${clipId}`;
export const framedPicturesOf = ({ pictures }: LibraryFolder, clipId: string): string =>
  path.join(pictures, framedPicturesName(clipId));

const foldersOf = ({ clips, pictures, sounds, backups, handovers, temporary }: LibraryFolder) => [
  ...[clips, pictures, sounds, backups, handovers, temporary],
];

/** Makes the folders that are not there yet. */
export function makeFolders(folder: LibraryFolder): void {
  for (const each of foldersOf(folder)) makeFolder(each);
}

/**
 * Closes the library's folder, and what the library keeps in it, to other users of the machine; gives how many files and folders were open to
 * them. Never opens anything, and leaves alone what else lies in the folder.
 */
export function closeFolder(folder: LibraryFolder): number {
  const { root, database, lock, log, oldLog } = folder;
  const beside = [database, `${database}-wal`, `${database}-shm`, lock, log, oldLog];
  const inside = foldersOf(folder).flatMap((each) => [each, ...allIn(each)]);
  return [realPath(root), ...beside, ...inside].filter(closeToOthers).length;
}

const allIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true }).map((each) => path.join(each.parentPath, each.name));

/** Makes an empty file that only its owner may read, unless it is there: what SQLite writes beside it gets the same rights. */
export function beginForOwner(file: string): void {
  closeSync(openSync(file, 'a', fileForOwner));
}

/** What media work is called until it is whole: ffmpeg chooses the format by the ending, so the mark stands in front. */
const unfinishedPrefix = '.unfinished-';

/** A part, or what SQLite keeps beside one while it writes it. */
const unfinishedSuffix = new RegExp(`\\${partSuffix}(-journal|-wal|-shm)?$`);

/** Removes what a killed process left half written; only the holder of the library's lock may call it. */
export function sweepParts(folder: LibraryFolder): void {
  for (const each of foldersOf(folder)) {
    for (const name of readdirSync(each)) {
      const left = unfinishedSuffix.test(name) || name.startsWith(unfinishedPrefix);
      if (left || each === folder.temporary) rmSync(path.join(each, name), { recursive: true, force: true });
    }
  }
}

/** Refuses a file or folder to write to that the library keeps something in, also through a link to it: `conflict`. */
export function assertOutsideLibrary(folder: LibraryFolder, target: string): void {
  const real = realPath(target);
  const owned = foldersOf(folder).map(realPath);
  const inOwned = owned.some((each) => real === each || real.startsWith(each + path.sep));
  const isOwned = [folder.database, folder.lock, folder.log, folder.oldLog]
    .map(realPath)
    .some((each) => real === each || real.startsWith(`${each}-`));
  if (!inOwned && !isOwned) return;
  throw new ProblemError('conflict', 'insideLibrary');
}

/** Where a path leads, links followed; what is not there yet keeps its name in the folder that is. */
function realPath(target: string): string {
  try {
    return realpathSync.native(target);
  } catch {
    const parent = path.dirname(target);
    return parent === target ? target : path.join(realPath(parent), path.basename(target));
  }
}
