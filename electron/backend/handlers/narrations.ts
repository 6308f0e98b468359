import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { step } from '../../../engine/wording/sayJob.ts';
import { ProblemError } from '../../contract/reply.ts';
import { tellChanged } from '../context/acting.ts';
import type { Context } from '../context/context.ts';
import { editionOfSession } from '../documents/editionOfSession.ts';
import { assertNamesClear } from '../documents/nameDoubts.ts';
import { hashFile } from '../files/hashing.ts';
import { settleForOwner } from '../files/ownerAlone.ts';
import { partSuffix } from '../files/writeWhole.ts';
import { joinVoice } from '../media/write/voice.ts';
import { addPiece, readPieces } from '../narration/recordedPieces.ts';
import { type ClipHome, findClip } from '../store/clips.ts';
import { inTransaction } from '../store/connection.ts';
import { assertOutsideLibrary } from '../store/folder.ts';
import { footageOfClip } from '../store/footage.ts';
import { uprightOf } from '../store/framing.ts';
import {
  discardNarrations,
  findNarration,
  insertNarration,
  keepNarration,
  keptNarration,
  type NarrationRow,
  narrationOfClip,
  recordingFolder,
} from '../store/narrations.ts';
import { assertWritable } from '../store/sessions.ts';
import { forgetContentHash } from '../store/summaries.ts';
import type { Handler } from './handler.ts';

export const getNarration: Handler<'narrations.get'> = (context, { clipId }) => {
  const library = context.library();
  findClip(library.reading, clipId);
  const row = narrationOfClip(library.reading, clipId);
  if (row === undefined) return null;
  return {
    narrationId: row.id,
    madeAt: row.made_at,
    state: row.state,
    lastsUs: row.lasts_us,
    sizeBytes: row.size_bytes ?? 0,
    track: keptNarration(library, clipId)?.track ?? null,
  };
};

export const beginNarration: Handler<'narrations.begin'> = (context, { clipId }) => {
  const { reading, writing } = context.library();
  const clip = findClip(reading, clipId);
  const footage = footageOfClip(reading, clipId);
  if (!footage?.file) throw new ProblemError('not-found', 'nothingToNarrate', { clip: clip.name });
  const narrationId = randomUUID();
  const upright = uprightOf(footage, clip);
  inTransaction(writing, () => {
    assertWritable(writing, clip.session_id);
    if (narrationOfClip(writing, clipId)) throw new ProblemError('conflict', 'narratedAlready', { clip: clip.name });
    insertNarration(writing, {
      id: narrationId,
      clip_id: clipId,
      made_at: new Date().toISOString(),
      shown_width: upright.width,
      shown_height: upright.height,
    });
  });
  return { narrationId };
};

export const appendToNarration: Handler<'narrations.append'> = async (context, { narrationId, ...piece }) => {
  const { reading, folder } = context.library();
  const { row } = existing(context, narrationId);
  assertOpen(row);
  await addPiece(recordingFolder(folder, narrationId), piece);
  // It was deleted meanwhile: what was just written goes too.
  if (!findNarration(reading, narrationId)) {
    await rm(recordingFolder(folder, narrationId), { recursive: true, force: true });
  }
  return {};
};

export const keepRecorded: Handler<'narrations.keep'> = async (context, { narrationId }) => {
  const { writing, folder } = context.library();
  const { row, clip } = existing(context, narrationId);
  assertOpen(row);
  const pieces = await readPieces(recordingFolder(folder, narrationId));
  if (pieces === null) throw new ProblemError('conflict', 'nothingRecorded', { clip: clip.name });
  const part = path.join(folder.sounds, `${narrationId}.webm${partSuffix}`);
  try {
    await joinVoice(await context.mediaTools(), pieces.parts, part);
    const sha256 = await hashFile(part);
    const { size } = await stat(part);
    const file = `${sha256}.webm`;
    await settleForOwner(part, path.join(folder.sounds, file));
    inTransaction(writing, () => {
      assertWritable(writing, clip.session_id);
      keepNarration(writing, narrationId, { file, sha256, sizeBytes: size, track: pieces.track });
      forgetContentHash(writing, clip.session_id);
    });
  } finally {
    await rm(part, { force: true });
  }
  await rm(recordingFolder(folder, narrationId), { recursive: true, force: true });
  tellChanged(context, clip.session_id);
  return {};
};

export const removeNarration: Handler<'narrations.remove'> = async (context, { narrationId }) => {
  const library = context.library();
  const { row, clip } = existing(context, narrationId);
  assertWritable(library.reading, clip.session_id);
  await discardNarrations(library, [row]);
  forgetContentHash(library.writing, clip.session_id);
  tellChanged(context, clip.session_id);
  return {};
};

export const startRendering: Handler<'narrations.render'> = (context, { clipId, path: asked }) => {
  const library = context.library();
  const clip = findClip(library.reading, clipId);
  const target = path.resolve(asked);
  assertOutsideLibrary(library.folder, target);
  const kept = keptNarration(library, clipId);
  if (kept === undefined || !existsSync(kept.soundFile)) {
    throw new ProblemError('not-found', 'notNarrated', { clip: clip.name });
  }
  const sessionId = clip.session_id;
  const { edition } = editionOfSession(context, sessionId, { names: 'asWanted', to: 'tellSheet' });
  assertNamesClear(context, sessionId, edition, { clipId });
  const jobId = context.jobs.add({
    kind: 'narration',
    title: step('narratedFilmOf', { clip: clip.name }),
    sessionId: clip.session_id,
    clipId,
    task: { do: 'narration', clipId, path: target },
  });
  return { jobId };
};

/** A narration with its clip. Throws `not-found`. */
function existing(context: Context, narrationId: string): { readonly row: NarrationRow; readonly clip: ClipHome } {
  const { reading } = context.library();
  const row = findNarration(reading, narrationId);
  if (!row) throw new ProblemError('not-found', 'narrationGone');
  return { row, clip: findClip(reading, row.clip_id) };
}

function assertOpen({ state }: NarrationRow): void {
  if (state === 'kept') throw new ProblemError('conflict', 'narrationKept');
}
