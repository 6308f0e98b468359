import * as v from 'valibot';
import { type ClipCover, clipCoverSchema } from '../../../engine/covers/cover.ts';
import type { Row } from './changes.ts';
import { all, first, type Reading } from './connection.ts';

export type CoverRow = Row & {
  readonly id: string;
  readonly clip_id: string;
  readonly ordinal: number;
  readonly kind: string;
  readonly first_frame: number;
  readonly last_frame: number;
  readonly look: string;
  readonly places: string;
};

/** A clip's covers in the order they were made. */
export function listCovers(reading: Reading, clipId: string): CoverRow[] {
  return all<CoverRow>(reading, 'SELECT * FROM cover WHERE clip_id = ? ORDER BY ordinal, id', clipId);
}

/** The covers of all clips of a session, clip by clip. */
export function listCoversOfSession(reading: Reading, sessionId: string): CoverRow[] {
  return all<CoverRow>(
    reading,
    `SELECT cover.* FROM cover JOIN clip ON clip.id = cover.clip_id JOIN entry ON entry.id = clip.entry_id
     WHERE entry.session_id = ? AND clip.removed_at IS NULL AND entry.removed_at IS NULL
     ORDER BY entry.ordinal, entry.id, clip.ordinal, clip.id, cover.ordinal, cover.id`,
    sessionId,
  );
}

/** One cover, or undefined. */
export function findCover(reading: Reading, coverId: string): CoverRow | undefined {
  return first<CoverRow>(reading, 'SELECT * FROM cover WHERE id = ?', coverId);
}

/** The place in line for a clip's next cover. */
export function nextCoverOrdinal(reading: Reading, clipId: string): number {
  const sql = 'SELECT coalesce(max(ordinal), 0) + 1 AS next FROM cover WHERE clip_id = ?';
  return first<{ next: number }>(reading, sql, clipId)?.next ?? 1;
}

/** The columns of what is covered. */
export function coverColumns(cover: ClipCover): Row {
  return {
    kind: cover.kind,
    first_frame: cover.firstFrame,
    last_frame: cover.lastFrame,
    look: cover.look,
    places: JSON.stringify(cover.kind === 'box' ? cover.places : []),
  };
}

/** What a row covers. */
export function coverOf(row: CoverRow): ClipCover {
  const { kind, first_frame: firstFrame, last_frame: lastFrame, look } = row;
  const places = kind === 'box' ? { places: JSON.parse(row.places) } : {};
  return v.parse(clipCoverSchema, { kind, firstFrame, lastFrame, look, ...places });
}
