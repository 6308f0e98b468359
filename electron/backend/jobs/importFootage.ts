import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import path from 'node:path';
import type { ClipFacts } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { type JobStep, step } from '../../../engine/wording/sayJob.ts';
import { ProblemError } from '../../contract/reply.ts';
import { copyHashing } from '../files/hashing.ts';
import { clipExtension } from '../files/mediaType.ts';
import { settleForOwner } from '../files/ownerAlone.ts';
import { partSuffix } from '../files/writeWhole.ts';
import { type ClipProbe, probeClip } from '../media/probe/probeClip.ts';
import type { RecordedAt } from '../media/probe/recordedAt.ts';
import type { MediaTools } from '../media/tools/mediaTools.ts';
import { filmstripHeightPx, makeFilmstrip, makePoster, picturesIn } from '../media/write/pictures.ts';
import type { Writing } from '../store/connection.ts';
import { type FootageRow, findFootageByContent, insertFootage } from '../store/footage.ts';
import { isChangedOnDisk, lying } from '../store/footageFiles.ts';
import { writeFrameTable } from '../store/frameTables.ts';
import type { Library } from '../store/library.ts';

/** Footage whose file is in the library's folder, ready to be shown by clips. */
export type ImportedFootage = {
  readonly footage: FootageRow;
  readonly table: FrameTable;
  /** When the film says that it was made; null where it doesn't. */
  readonly recordedAt: RecordedAt | null;
  /** Adds the footage's rows, unless the library knew it; to be called inside the transaction that adds its clip. */
  readonly record: (writing: Writing) => void;
  /** Removes the files again, when that transaction failed. */
  readonly discard: () => Promise<void>;
};

type Work = { readonly signal: AbortSignal; readonly report: (share: number, step: JobStep | null) => void };

/**
 * Copies a clip's file into the library, reads what it is and makes its pictures; content that the library
 * already holds is not kept twice. Throws a ProblemError with one sentence, and then leaves no file behind.
 */
export async function importFootage(
  library: Library,
  tools: MediaTools,
  source: string,
  work: Work,
): Promise<ImportedFootage> {
  work.report(0, step('reading'));
  const probe = await probeClip(tools, source, { signal: work.signal });
  const parts: string[] = [];
  const partIn = (folder: string) => {
    const part = path.join(folder, `${randomUUID()}${partSuffix}`);
    parts.push(part);
    return part;
  };
  try {
    const clipPart = partIn(library.folder.clips);
    const onBytes = (bytes: number) => work.report(0.05 + (0.65 * bytes) / probe.sizeBytes, step('copying'));
    const copied = await copyHashing(source, clipPart, { signal: work.signal, onBytes });
    if (copied.sizeBytes !== probe.sizeBytes) throw changedMeanwhile(source);
    const known = findFootageByContent(library.reading, copied.sha256);
    if (known) return await shareKnown(library, known, probe, clipPart);

    work.report(0.7, step('makingPictures'));
    const pictures = await makePictures(tools, source, probe, {
      poster: partIn(library.folder.pictures),
      filmstrip: partIn(library.folder.pictures),
      signal: work.signal,
    });
    const footage = {
      ...footageRow(probe, copied.sha256, clipExtension(source), pictures.count),
      file_modified_ms: (await lying(clipPart))?.modifiedMs ?? null,
    };
    const moves = [
      [clipPart, path.join(library.folder.clips, footage.file ?? '')],
      [pictures.poster, path.join(library.folder.pictures, footage.poster_file ?? '')],
      [pictures.filmstrip, path.join(library.folder.pictures, footage.filmstrip_file ?? '')],
    ] as const;
    for (const [part, target] of moves) await settleForOwner(part, target);
    work.report(1, null);
    return {
      footage,
      table: probe.table,
      recordedAt: probe.recordedAt,
      record: (writing) => {
        insertFootage(writing, footage);
        writeFrameTable(writing, footage.id, 'original', probe.table);
      },
      discard: () => removeAll(moves.map(([, target]) => target)),
    };
  } finally {
    await removeAll(parts);
  }
}

/** The library's own file stays; one that went missing, or was changed, comes back with the new copy. */
async function shareKnown(
  library: Library,
  footage: FootageRow,
  { table, recordedAt }: ClipProbe,
  part: string,
): Promise<ImportedFootage> {
  const file = path.join(library.folder.clips, footage.file ?? '');
  const whole = existsSync(file) && !(await isChangedOnDisk(library, footage, 'original', 'readUnknown'));
  if (!whole) {
    await settleForOwner(part, file);
    // The same content as before: how it lies is noted.
    await isChangedOnDisk(library, footage, 'original', 'readUnknown');
  }
  return { footage, table, recordedAt, record: () => undefined, discard: async () => undefined };
}

function changedMeanwhile(source: string): ProblemError {
  return new ProblemError('bad-media', 'changedWhileRead', { file: path.basename(source) });
}

async function removeAll(files: readonly string[]): Promise<void> {
  for (const file of files) await rm(file, { force: true });
}

/** Where a clip's pictures were written, and how many stand in the filmstrip. */
export type Pictures = { readonly poster: string; readonly filmstrip: string; readonly count: number };

/** Writes a clip's poster and filmstrip into the files given. */
export async function makePictures(
  tools: MediaTools,
  source: string,
  { facts }: ClipProbe,
  { poster, filmstrip, signal }: { readonly poster: string; readonly filmstrip: string; readonly signal: AbortSignal },
): Promise<Pictures> {
  const count = picturesIn(facts.durationUs);
  await makePoster(tools, source, poster, { atUs: Math.floor(facts.durationUs / 2), signal });
  const { durationUs } = facts;
  await makeFilmstrip(tools, source, filmstrip, { pictures: count, heightPx: filmstripHeightPx, durationUs, signal });
  return { poster, filmstrip, count };
}

/** The row of newly probed footage; its files are named after its content. */
export function footageRow(probe: ClipProbe, sha256: string, extension: string, pictures: number): FootageRow {
  return {
    ...factColumns({ ...probe.facts, sha256 }),
    file: `${sha256}${extension}`,
    size_bytes: probe.sizeBytes,
    container: probe.container,
    shown_width: probe.shown.width,
    shown_height: probe.shown.height,
    constant_rate: probe.constantRate ? 1 : 0,
    mean_fps: probe.meanFps,
    capture_fps: probe.captureFps,
    real_time_factor: probe.realTimeFactor,
    has_audio: probe.hasAudio ? 1 : 0,
    plays: probe.plays,
    proxy_reason: probe.proxyReason,
    poster_file: `${sha256}-poster.jpg`,
    filmstrip_file: `${sha256}-filmstrip.jpg`,
    filmstrip_pictures: pictures,
  };
}

/** The row of footage that is elsewhere: its facts are known, its file and frame times are not. */
export function factsOnlyRow(facts: ClipFacts): FootageRow {
  return factColumns(facts);
}

function factColumns(facts: ClipFacts): FootageRow {
  const sideways = facts.rotationDeg === 90 || facts.rotationDeg === 270;
  return {
    id: randomUUID(),
    sha256: facts.sha256 ?? null,
    file: null,
    size_bytes: null,
    file_modified_ms: null,
    container: '',
    codec: facts.codec,
    width: facts.width,
    height: facts.height,
    rotation_deg: facts.rotationDeg,
    shown_width: sideways ? facts.height : facts.width,
    shown_height: sideways ? facts.width : facts.height,
    frames: facts.frames,
    time_base_numerator: facts.timeBase.numerator,
    time_base_denominator: facts.timeBase.denominator,
    start_us: facts.startUs ?? 0,
    duration_us: facts.durationUs,
    constant_rate: 0,
    mean_fps: facts.durationUs > 0 ? (facts.frames * 1_000_000) / facts.durationUs : 0,
    capture_fps: null,
    real_time_factor: 1,
    has_audio: 0,
    plays: null,
    proxy_reason: '',
    proxy_file: null,
    proxy_size_bytes: null,
    proxy_modified_ms: null,
    proxy_sha256: null,
    poster_file: null,
    filmstrip_file: null,
    filmstrip_pictures: 0,
  };
}
