import { existsSync } from 'node:fs';
import path from 'node:path';
import type { View } from '../../../engine/exercises/exercise.ts';
import type { Message } from '../../../engine/message/message.ts';
import type { ProblemId } from '../../../engine/wording/sayProblem.ts';
import type { ClipMedia } from '../../contract/clips.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Row } from './changes.ts';
import { all, first, type Reading } from './connection.ts';
import { listEntries } from './entries.ts';
import type { LibraryFolder } from './folder.ts';
import { type FootageRow, findFootage } from './footage.ts';
import { type FramingColumns, lookOfRow, uprightOf } from './framing.ts';

export type ClipRow = Row &
  FramingColumns & {
    readonly id: string;
    readonly entry_id: string;
    readonly footage_id: string | null;
    readonly ordinal: number;
    readonly name: string;
    readonly view: View | null;
    readonly real_time_factor: number;
    readonly load_kg: number | null;
    /** The clip whose set it shows from another side, and how much later a moment stands on its own clock, in real time. */
    readonly same_set_as: string | null;
    readonly same_set_offset_us: number | null;
    /** When it went into the bin; null = it is in use. */
    readonly removed_at: string | null;
  };

/** Where a clip belongs. */
export type ClipHome = ClipRow & { readonly session_id: string; readonly exercise: string };

/** A clip in use with its session and exercise. Throws `not-found`, also where it, its entry or session lies in the bin. */
export function findClip(reading: Reading, clipId: string): ClipHome {
  const clip = first<ClipHome>(
    reading,
    `SELECT clip.*, entry.session_id, entry.exercise FROM clip JOIN entry ON entry.id = clip.entry_id
       JOIN session ON session.id = entry.session_id
     WHERE clip.id = ? AND clip.removed_at IS NULL AND entry.removed_at IS NULL AND session.removed_at IS NULL`,
    clipId,
  );
  if (!clip) throw new ProblemError('not-found', 'clipGone');
  return clip;
}

/** A clip, be it in the bin. Throws `not-found`. */
export function findClipAnywhere(reading: Reading, clipId: string): ClipHome {
  const sql = `SELECT clip.*, entry.session_id, entry.exercise FROM clip JOIN entry ON entry.id = clip.entry_id
    WHERE clip.id = ?`;
  const clip = first<ClipHome>(reading, sql, clipId);
  if (!clip) throw new ProblemError('not-found', 'clipGone');
  return clip;
}

/** A clip with the day and the session it is of. */
export type AlikeClip = {
  readonly clip_id: string;
  readonly session_id: string;
  readonly date: string;
  readonly name: string;
  readonly exercise: string;
};

/** Clips of the same trainee and exercise, the newest session first; second looks are left out. */
export function listClipsAlike(reading: Reading, clipId: string): AlikeClip[] {
  return all<AlikeClip>(
    reading,
    `SELECT clip.id AS clip_id, session.id AS session_id, session.date, clip.name, entry.exercise
     FROM clip JOIN entry ON entry.id = clip.entry_id JOIN session ON session.id = entry.session_id
     WHERE session.second_look_of IS NULL
       AND clip.removed_at IS NULL AND entry.removed_at IS NULL AND session.removed_at IS NULL
       AND (session.trainee_id, entry.exercise) IN (
         SELECT s.trainee_id, e.exercise FROM clip c JOIN entry e ON e.id = c.entry_id
         JOIN session s ON s.id = e.session_id WHERE c.id = ?)
     ORDER BY session.date DESC, session.created_at DESC, entry.ordinal, clip.ordinal, clip.id`,
    clipId,
  );
}

/** An entry's clips that are in use, in order. */
export function listClips(reading: Reading, entryId: string): ClipRow[] {
  return listClipsAnywhere(reading, entryId).filter((clip) => clip.removed_at === null);
}

/** An entry's clips, those in the bin too, in order. */
export function listClipsAnywhere(reading: Reading, entryId: string): ClipRow[] {
  return all<ClipRow>(reading, 'SELECT * FROM clip WHERE entry_id = ? ORDER BY ordinal, id', entryId);
}

/** The place in line for an entry's next clip. */
export function nextClipOrdinal(reading: Reading, entryId: string): number {
  const sql = 'SELECT coalesce(max(ordinal), 0) + 1 AS next FROM clip WHERE entry_id = ?';
  return first<{ next: number }>(reading, sql, entryId)?.next ?? 1;
}

/** What the player needs to know of each clip of a session, in the session's order. */
export function mediaOfSession(
  reading: Reading,
  folder: LibraryFolder,
  sessionId: string,
  changed: ChangedFiles,
): ClipMedia[] {
  return listEntries(reading, sessionId)
    .flatMap((entry) => listClips(reading, entry.id))
    .map((clip) => {
      const footage = clip.footage_id === null ? undefined : findFootage(reading, clip.footage_id);
      return clipMediaOf(folder, { clip, footage, changed });
    });
}

const mostPosters = 3;

/** A clip to be recognised by its poster, and how it shows its footage (`lookKey`). */
export type Poster = { readonly clipId: string; readonly look: string };

/** The first clips of a session that have a poster, at most three. */
export function postersOf(reading: Reading, folder: LibraryFolder, sessionId: string): Poster[] {
  const sql = `SELECT clip.*, footage.poster_file AS poster FROM entry
    JOIN clip ON clip.entry_id = entry.id JOIN footage ON footage.id = clip.footage_id
    WHERE entry.session_id = ? AND footage.poster_file IS NOT NULL
      AND clip.removed_at IS NULL AND entry.removed_at IS NULL
    ORDER BY entry.ordinal, entry.id, clip.ordinal, clip.id`;
  const posters: Poster[] = [];
  for (const { poster, ...clip } of all<ClipRow & { poster: string }>(reading, sql, sessionId)) {
    if (posters.length < mostPosters && isThere(folder.pictures, poster))
      posters.push({ clipId: clip.id, look: lookOfRow(clip) });
  }
  return posters;
}

/** Which file of some footage can't be shown because it was changed: what was filmed, or a playable copy that is being made anew. */
export type ChangedFile = 'original' | 'playable';
export type ChangedFiles = ReadonlyMap<string, ChangedFile>;

/** What the player needs to know of a clip. */
function clipMediaOf(
  folder: LibraryFolder,
  {
    clip,
    footage,
    changed,
  }: { readonly clip: ClipRow; readonly footage: FootageRow | undefined; readonly changed: ChangedFiles },
): ClipMedia {
  const upright = footage && uprightOf(footage, clip);
  const trouble = troubleOf(folder, clip.name, { footage, changed: footage && changed.get(footage.id) });
  return {
    clipId: clip.id,
    ready: trouble === null,
    trouble,
    proxy: footage?.plays === 'proxy',
    width: upright?.width ?? 0,
    height: upright?.height ?? 0,
    durationUs: footage?.duration_us ?? 0,
    frames: footage?.frames ?? 0,
    constantRate: footage?.constant_rate === 1,
    meanFps: footage?.mean_fps ?? 0,
    hasPoster: isThere(folder.pictures, footage?.poster_file),
    filmstripPictures: isThere(folder.pictures, footage?.filmstrip_file) ? (footage?.filmstrip_pictures ?? 0) : 0,
  };
}

function troubleOf(
  folder: LibraryFolder,
  clip: string,
  { footage, changed }: { readonly footage: FootageRow | undefined; readonly changed: ChangedFile | undefined },
): Message<ProblemId> | null {
  if (!footage?.file) return { id: 'footageElsewhere', values: {} };
  if (footage.plays === 'proxy') {
    if (changed === 'playable') return { id: 'playableCopyAnew', values: { clip } };
    if (changed === 'original' && isThere(folder.clips, footage.proxy_file)) {
      return { id: 'clipFileChanged', values: { clip } };
    }
    if (footage.proxy_file === null) return { id: 'playableCopyToCome', values: {} };
    if (isThere(folder.clips, footage.proxy_file)) return null;
    return { id: 'playableCopyMissing', values: { clip } };
  }
  if (changed === 'original') return { id: 'clipFileChanged', values: { clip } };
  if (isThere(folder.clips, footage.file)) return null;
  return { id: 'clipFileMissing', values: { clip } };
}

function isThere(folder: string, name: string | null | undefined): boolean {
  return typeof name === 'string' && existsSync(path.join(folder, name));
}
