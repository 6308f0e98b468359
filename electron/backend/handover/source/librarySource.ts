import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import path from 'node:path';
import type { ClipCover } from '../../../../engine/covers/cover.ts';
import { toMarkdown } from '../../../../engine/document/toMarkdown.ts';
import { type Edition, withFootage } from '../../../../engine/edition/edition.ts';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import type { NameMode } from '../../../../engine/names/shownName.ts';
import type { NarrationTrack } from '../../../../engine/narration/narration.ts';
import type { Recording } from '../../../../engine/recording/recording.ts';
import type { Clip } from '../../../../engine/review/review.ts';
import { writeReview } from '../../../../engine/review/writeReview.ts';
import { ProblemError } from '../../../contract/reply.ts';
import type { Context } from '../../context/context.ts';
import { editionOfSession, type SessionEdition } from '../../documents/editionOfSession.ts';
import { type ClipToMeasure, clipToMeasure } from '../../measure/clipToMeasure.ts';
import { measurementOfClip, recordingOfClip } from '../../measure/measurementOfClip.ts';
import { inSnapshot } from '../../store/connection.ts';
import { coverOf, listCovers } from '../../store/covers.ts';
import { factsOf } from '../../store/footage.ts';
import { isChangedOnDisk } from '../../store/footageFiles.ts';
import { framingOf } from '../../store/framing.ts';
import { keptNarration } from '../../store/narrations.ts';
import type { Narration } from '../render/clips/narratedFilm.ts';
import { type HandoverSource, type OpenedClip, openedClip } from './handoverSource.ts';

/** A session of a library as it is handed over: read at one moment, and the same whatever is done to it later. */
export type LibrarySource = HandoverSource &
  SessionEdition & {
    /** What is covered in its clips, clip by clip. */
    readonly covered: readonly { readonly clipId: string; readonly cover: ClipCover }[];
    /** What was said over its clips: each with the SHA-256 of its sound. */
    readonly narrated: readonly { readonly clipId: string; readonly sha256: string }[];
  };

/** What the library held of a clip. */
type ClipSnapshot = {
  readonly asked: ClipToMeasure;
  readonly recording: Recording | null;
  readonly measurement: SetMeasurement | null;
  readonly covered: readonly ClipCover[];
  readonly narration: (Narration & { readonly sha256: string }) | null;
};

/** A session of the library to hand over, with its letter. Throws `not-found`, and `conflict` for a second look. */
export function librarySource(context: Context, sessionId: string, names: NameMode | 'asWanted'): LibrarySource {
  return inSnapshot(context.library().reading, () => {
    const { edition: unmeasured, actId } = editionOfSession(context, sessionId, {
      names,
      to: 'writeLetter',
      clocks: 'footage',
    });
    const clips = unmeasured.review.entries.flatMap((entry) => entry.clips);
    const snapshots = new Map(clips.map((clip) => [clip.id, snapshotOfClip(context, clip.id)]));
    const measures = new Map(
      [...snapshots].flatMap(([id, { measurement }]) => (measurement === null ? [] : [[id, measurement] as const])),
    );
    const edition = withFootage(unmeasured, { facts: new Map(), measures });
    const shown = new Map(clips.map((clip) => [clip.id, clip]));
    return {
      ...{ sessionId, edition, actId },
      covered: [...snapshots].flatMap(([clipId, { covered }]) => covered.map((cover) => ({ clipId, cover }))),
      narrated: [...snapshots].flatMap(([clipId, { narration }]) =>
        narration === null ? [] : [{ clipId, sha256: narration.sha256 }],
      ),
      openClip: async (clipId) => openClip(context, shown.get(clipId), snapshots.get(clipId), edition),
    };
  });
}

function snapshotOfClip(context: Context, clipId: string): ClipSnapshot {
  const library = context.library();
  const spoken = keptNarration(library, clipId);
  const asked = clipToMeasure(context, library.reading, clipId);
  return {
    asked,
    recording: recordingOfClip(library, asked)?.recording ?? null,
    measurement: measurementOfClip(library, asked),
    covered: listCovers(library.reading, clipId).map(coverOf),
    narration: spoken === undefined ? null : { ...spoken, sha256: spoken.row.sha256 ?? '' },
  };
}

async function openClip(
  context: Context,
  clip: Clip | undefined,
  snapshot: ClipSnapshot | undefined,
  { hideName }: Edition,
): Promise<OpenedClip> {
  const library = context.library();
  const { folder } = library;
  const source = snapshot?.asked.source;
  const file = source?.footage.file ? path.join(folder.clips, source.footage.file) : null;
  if (!clip || !snapshot || !source || file === null || !existsSync(file)) {
    throw new ProblemError('not-found', 'footageNotInLibrary', { clip: clip?.name ?? '' });
  }
  const { footage, table, shown, range } = source;
  if (await isChangedOnDisk(library, footage, 'original', 'readUnknown')) {
    throw new ProblemError('bad-media', 'handedFootageChanged', { clip: clip.name });
  }
  const { asked, recording, measurement, covered, narration } = snapshot;
  return openedClip({
    file,
    table,
    ...{ shown, range },
    framing: framingOf(asked.clip),
    hasSound: footage.has_audio === 1,
    facts: factsOf(footage),
    drawings: clip.drawings ?? [],
    setUp: asked.setUp,
    view: asked.clip.view,
    ...{ recording, measurement, covered },
    narration: narration && { ...narration, track: withoutNames(narration.track, hideName) },
  });
}

/** What was shown while somebody spoke, with no name in the texts that were drawn then. */
const withoutNames = (track: NarrationTrack, hide: Edition['hideName']): NarrationTrack => ({
  ...track,
  shapes: track.shapes.map((drawn) => (drawn.shape === 'text' ? { ...drawn, text: hide(drawn.text) } : drawn)),
});

/**
 * SHA-256 of what a session says when it leaves the desk, under the name that the trainee wants: its letter, the data of
 * its sheet, its notes and drawings, what is covered, and what was said over clips. It rests on formats that are published, so that another way to
 * keep the same in memory is nothing new. How a handover is made (paper, clips, another name) is no part of it.
 */
export function contentHash({ edition, covered, narrated }: LibrarySource): string {
  const parts = [
    toMarkdown(edition.letter().document),
    edition.sheetJson(),
    writeReview(edition.review),
    JSON.stringify(covered),
    // Nothing was said over a clip: the same hash as before there was anything to say.
    ...(narrated.length === 0 ? [] : [JSON.stringify(narrated)]),
  ];
  return createHash('sha256').update(JSON.stringify(parts)).digest('hex');
}

/** The same of a session as it is now. Throws `not-found`, and `conflict` for a second look. */
export const contentOfSession = (context: Context, sessionId: string): string =>
  contentHash(librarySource(context, sessionId, 'asWanted'));
