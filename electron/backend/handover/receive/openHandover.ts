import { createHash } from 'node:crypto';
import { createReadStream, createWriteStream } from 'node:fs';
import { lstat, mkdir, realpath, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import * as v from 'valibot';
import type { Review } from '../../../../engine/review/review.ts';
import { writeReview } from '../../../../engine/review/writeReview.ts';
import { ProblemError } from '../../../contract/reply.ts';
import type { JudgingData } from '../../catalogue/loadCatalogue.ts';
import { reviewOfText } from '../../reviews/readReviewFile.ts';
import { isFootage, type Manifest, manifestName, manifestSchema, reviewName } from '../package/manifest.ts';
import { type HandoverTrouble, HostileZip, openZip } from './openZip.ts';

/** A handover that came from another coach's Rackside, looked at and found sound. */
export type ReceivedHandover = {
  readonly review: Review;
  /**
   * Puts the review and the footage that it names into an empty folder; gives the review's file there. Of a handover
   * that was kept without its footage, the review alone.
   */
  readonly unpack: (into: string, signal: AbortSignal) => Promise<string>;
  readonly close: () => void;
};

type Source = {
  /** The content of a file, or null where there is none; `bytes` is what it says it holds. */
  readonly open: (
    name: string,
  ) => Promise<{ readonly bytes: number; readonly content: () => Promise<Readable> } | null>;
  readonly close: () => void;
};

const mostTextBytes = 5_000_000;

/** Whether a path is a handover to be taken in and no review file: a folder, or a zip by its name. */
export async function isHandover(packagePath: string): Promise<boolean> {
  return (
    /\.(zip|rackside-handover)$/i.test(packagePath) ||
    ((await stat(packagePath).catch(() => undefined))?.isDirectory() ?? false)
  );
}

/**
 * Opens a handover's folder or zip and checks it: its list, its review, and that the footage it names lies within it.
 * Nothing is written. Throws `not-found`, or `bad-review` with one sentence.
 */
export async function openHandover(packagePath: string, judging: JudgingData): Promise<ReceivedHandover> {
  const shownName = path.basename(packagePath).replaceAll(/\p{C}/gu, '').slice(0, 100);
  const refuse = (why: HandoverTrouble, cause?: unknown) =>
    new ProblemError('bad-review', 'noHandover', { file: shownName, why }, { cause });
  const guarded = async <T>(work: () => Promise<T>): Promise<T> => {
    try {
      return await work();
    } catch (error) {
      if (error instanceof HostileZip) throw refuse(error.why, error);
      throw error;
    }
  };
  const kind = await stat(packagePath).catch((cause: unknown) => {
    throw new ProblemError('not-found', 'notOpened', { file: shownName }, { cause });
  });
  const source = await guarded(() =>
    kind.isDirectory() ? folderSource(packagePath) : zipSource(packagePath, kind.size),
  );
  try {
    const manifest = parseManifest(await guarded(() => textOf(source, manifestName)));
    if (manifest === null) throw refuse('noList');
    const text = await guarded(() => textOf(source, reviewName));
    const said = manifest.files.find(({ name }) => name === reviewName);
    if (text === null || said === undefined) throw refuse('noReview');
    if (sha256Of(text) !== said.sha256) throw refuse('reviewChanged');
    const review = reviewOfText(text, reviewName, judging);
    const footage = footageOf(review);
    const listed = new Map(manifest.files.map((file) => [file.name, file]));
    if (footage.some((name) => !listed.has(name))) throw refuse('footageOutside');
    return {
      review,
      close: source.close,
      unpack: (into, signal) =>
        guarded(async () => {
          const reviewFile = path.join(into, reviewName);
          if (await isWithoutFootage(source, manifest)) {
            await writeFile(reviewFile, writeReview(withoutPaths(review)));
            return reviewFile;
          }
          for (const name of [reviewName, ...footage]) {
            const file = await source.open(name);
            const expected = listed.get(name);
            if (file === null || file.bytes !== expected?.bytes) throw new HostileZip('clipMissing');
            const target = path.join(into, ...name.split('/'));
            await mkdir(path.dirname(target), { recursive: true });
            const hash = createHash('sha256');
            await copyCounting(await file.content(), target, { hash, most: expected.bytes, signal });
            if (hash.digest('hex') !== expected.sha256) throw new HostileZip('clipChanged');
          }
          return reviewFile;
        }),
    };
  } catch (error) {
    source.close();
    throw error;
  }
}

const sha256Of = (text: string): string => createHash('sha256').update(text).digest('hex');

const footageOf = (review: Review): readonly string[] => [
  ...new Set(review.entries.flatMap(({ clips }) => clips.flatMap(({ path: file }) => file ?? []))),
];

/** Whether it is what a desk keeps of a handover: every file that was handed over but its footage, of which there is none. */
async function isWithoutFootage(source: Source, { files }: Manifest): Promise<boolean> {
  for (const { name } of files) {
    const isThere = (await source.open(name)) !== null;
    if (isThere === isFootage(name)) return false;
  }
  return true;
}

const withoutPaths = (review: Review): Review => ({
  ...review,
  entries: review.entries.map((entry) => ({ ...entry, clips: entry.clips.map(({ path: _, ...clip }) => clip) })),
});

async function folderSource(folder: string): Promise<Source> {
  const root = await realpath(folder);
  return {
    open: async (name) => {
      const file = path.join(root, ...name.split('/'));
      const kind = await lstat(file).catch(() => undefined);
      if (kind === undefined) return null;
      // A link, here or further up, could lead to any file of this machine.
      if (!kind.isFile() || (await realpath(file)) !== file) throw new HostileZip('link');
      return { bytes: kind.size, content: async () => createReadStream(file) };
    },
    close: () => undefined,
  };
}

async function zipSource(file: string, bytes: number): Promise<Source> {
  const { files, close } = await openZip(file, bytes);
  return {
    open: async (name) => {
      const found = files.get(name);
      return found ? { bytes: found.bytes, content: found.read } : null;
    },
    close,
  };
}

/** A text of a few megabytes at most, or null. Throws a HostileZip when it is longer or no text. */
async function textOf(source: Source, name: string): Promise<string | null> {
  const file = await source.open(name);
  if (file === null) return null;
  if (file.bytes > mostTextBytes) throw new HostileZip('textTooLong');
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  try {
    for await (const chunk of await file.content()) {
      bytes += chunk.length;
      if (bytes > mostTextBytes) throw new HostileZip('textTooLong');
      chunks.push(chunk);
    }
    return new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks));
  } catch (error) {
    if (error instanceof HostileZip) throw error;
    throw new HostileZip('textUnreadable', { cause: error });
  }
}

function parseManifest(text: string | null): Manifest | null {
  try {
    const parsed = v.safeParse(manifestSchema, JSON.parse(text ?? ''));
    return parsed.success ? parsed.output : null;
  } catch {
    return null;
  }
}

async function copyCounting(
  content: Readable,
  target: string,
  {
    hash,
    most,
    signal,
  }: { readonly hash: ReturnType<typeof createHash>; readonly most: number; readonly signal: AbortSignal },
): Promise<void> {
  async function* counted() {
    let bytes = 0;
    for await (const chunk of content) {
      bytes += chunk.length;
      if (bytes > most) throw new HostileZip('clipTooLong');
      hash.update(chunk);
      yield chunk;
    }
  }
  try {
    await pipeline(Readable.from(counted()), createWriteStream(target, { flags: 'wx' }), { signal });
  } catch (error) {
    if (signal.aborted) throw new ProblemError('cancelled', 'cancelled');
    if (error instanceof Error && 'code' in error && /^E(?:NOSPC|DQUOT|ACCES|ROFS|IO)$/.test(String(error.code)))
      throw error;
    throw error instanceof HostileZip ? error : new HostileZip('clipDamaged', { cause: error });
  }
}
