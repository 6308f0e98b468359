import type { Readable } from 'node:stream';
import yauzl from 'yauzl';

/** A zip that is not what it should be; says in a few words what is wrong with it. */
export class HostileZip extends Error {
  readonly why: HandoverTrouble;

  constructor(why: HandoverTrouble, options?: ErrorOptions) {
    super(`not a sound handover: ${why}`, options);
    this.why = why;
  }
}

/** What is wrong with a folder or zip that should be a handover: a choice of the message `noHandover`. */
export type HandoverTrouble =
  | 'noList'
  | 'noReview'
  | 'reviewChanged'
  | 'footageOutside'
  | 'clipMissing'
  | 'clipChanged'
  | 'clipTooLong'
  | 'clipDamaged'
  | 'textTooLong'
  | 'textUnreadable'
  | 'link'
  | 'noZip'
  | 'tooManyFiles'
  | 'listDamaged'
  | 'growsTooMuch'
  | 'fileDamaged'
  | 'twice'
  | 'locked';

/** A file within an open zip. */
export type ZippedFile = {
  readonly name: string;
  readonly bytes: number;
  /** Throws, when read, if it holds more or less than it says. */
  readonly read: () => Promise<Readable>;
};

export type OpenZip = { readonly files: ReadonlyMap<string, ZippedFile>; readonly close: () => void };

const mostFiles = 10_000;
/** Deflating text makes it some twenty times smaller at best; a bomb, thousands of times. */
const mostGrowth = 200;
const alwaysAllowedBytes = 20_000_000;
const linkMode = 0o120_000;
const modeMask = 0o170_000;

/**
 * Lists a zip without unpacking anything. Throws a HostileZip for names that lead out of the folder, links, encrypted or
 * doubled files, far too many of them, or content that grows beyond reason; and what the disk says.
 */
export async function openZip(path: string, packedBytes: number): Promise<OpenZip> {
  const zip = await opened(path);
  try {
    const files = await listed(zip, packedBytes);
    return { files, close: () => zip.close() };
  } catch (error) {
    zip.close();
    throw error;
  }
}

function opened(path: string): Promise<yauzl.ZipFile> {
  const options = { lazyEntries: true, autoClose: false, strictFileNames: true, validateEntrySize: true } as const;
  return new Promise((resolve, reject) => {
    yauzl.open(path, options, (error, zip) => {
      if (error) reject(isOfDisk(error) ? error : new HostileZip('noZip', { cause: error }));
      else resolve(zip);
    });
  });
}

const isOfDisk = (error: Error): boolean => 'code' in error && typeof error.code === 'string';

function listed(zip: yauzl.ZipFile, packedBytes: number): Promise<ReadonlyMap<string, ZippedFile>> {
  const files = new Map<string, ZippedFile>();
  let total = 0;
  return new Promise((resolve, reject) => {
    if (zip.entryCount > mostFiles) {
      reject(new HostileZip('tooManyFiles'));
      return;
    }
    zip.on('error', (error: Error) => reject(new HostileZip('listDamaged', { cause: error })));
    zip.on('end', () => resolve(files));
    zip.on('entry', (entry: yauzl.Entry) => {
      total += entry.uncompressedSize;
      const trouble = troubleOf(entry, files);
      if (trouble !== null) return reject(new HostileZip(trouble));
      if (total > alwaysAllowedBytes + mostGrowth * packedBytes) {
        return reject(new HostileZip('growsTooMuch'));
      }
      if (!entry.fileName.endsWith('/')) {
        const { fileName: name, uncompressedSize: bytes } = entry;
        files.set(name, { name, bytes, read: () => contentOf(zip, entry) });
      }
      zip.readEntry();
    });
    zip.readEntry();
  });
}

function troubleOf(entry: yauzl.Entry, files: ReadonlyMap<string, ZippedFile>): HandoverTrouble | null {
  if (((entry.externalFileAttributes >>> 16) & modeMask) === linkMode) return 'link';
  if (entry.isEncrypted()) return 'locked';
  if (files.has(entry.fileName)) return 'twice';
  return null;
}

function contentOf(zip: yauzl.ZipFile, entry: yauzl.Entry): Promise<Readable> {
  return new Promise((resolve, reject) => {
    zip.openReadStream(entry, (error, stream) => {
      if (error) reject(new HostileZip('fileDamaged', { cause: error }));
      else resolve(stream);
    });
  });
}
