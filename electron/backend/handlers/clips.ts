import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { step } from '../../../engine/wording/sayJob.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { mediaType } from '../files/mediaType.ts';
import type { Changes } from '../store/changes.ts';
import { type ClipRow, findClip, findClipAnywhere, listClipsAlike } from '../store/clips.ts';
import { findEntry, nextEntryOrdinal, planColumns } from '../store/entries.ts';
import { type FootageRow, footageOfClip } from '../store/footage.ts';
import { isChangedOnDisk } from '../store/footageFiles.ts';
import { readFrameTable } from '../store/frameTables.ts';
import { keptNarration } from '../store/narrations.ts';
import { findSession } from '../store/sessions.ts';
import { actOnSession } from './acts.ts';
import { pictureOfClip } from './clipPictures.ts';
import type { Handler } from './handler.ts';
import { knownExercise } from './judging.ts';

export const importClips: Handler<'clips.import'> = (context, { sessionId, entryId, exercise, view, paths }) => {
  findSession(context.library().reading, sessionId);
  const into = entryFor(context, sessionId, entryId, exercise);
  const jobIds = paths.map((each) =>
    context.jobs.add({
      kind: 'import',
      title: step('importFile', { file: path.basename(each) }),
      sessionId,
      task: { do: 'clip', path: path.resolve(each), sessionId, entryId: into, view },
    }),
  );
  return { jobIds };
};

export const updateClip: Handler<'clips.update'> = (context, { clipId, change }) => {
  const clip = findClip(context.library().reading, clipId);
  return actOnSession(context, clip.session_id, (changes) => {
    changes.update(
      'clip',
      { id: clipId },
      {
        ...(change.view !== undefined && { view: change.view }),
        ...(change.realTimeFactor !== undefined && { real_time_factor: change.realTimeFactor }),
        ...(change.loadKg !== undefined && { load_kg: change.loadKg }),
        ...(change.name !== undefined && { name: change.name }),
      },
    );
    return { name: { id: 'clipChanged', values: { clip: change.name ?? clip.name } }, value: {} };
  });
};

export const getFrameTable: Handler<'clips.frameTable'> = (context, { clipId }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const table = clip.footage_id === null ? undefined : readFrameTable(reading, clip.footage_id, 'original');
  if (clip.footage_id === null || !table) {
    throw new ProblemError('not-found', 'noFramesInLibrary', { clip: clip.name });
  }
  return { table, playback: readFrameTable(reading, clip.footage_id, 'proxy') ?? table };
};

/** What a clip can be laid beside. */
export const listAlike: Handler<'clips.alike'> = (context, { clipId }) => {
  const { reading } = context.library();
  findClip(reading, clipId);
  return listClipsAlike(reading, clipId).map(({ clip_id, session_id, date, name, exercise }) => ({
    ...{ clipId: clip_id, sessionId: session_id, date, name, exercise },
  }));
};

function entryFor(
  context: Context,
  sessionId: string,
  entryId: string | undefined,
  exercise: string | undefined,
): string {
  if (entryId !== undefined) {
    const entry = findEntry(context.library().reading, entryId);
    if (entry.session_id === sessionId) return entry.id;
    throw new ProblemError('conflict', 'entryElsewhereClip');
  }
  if (exercise === undefined) {
    throw new ProblemError('bad-request', 'noExerciseNamed');
  }
  knownExercise(context.catalogue(), exercise);
  const id = randomUUID();
  actOnSession(context, sessionId, (changes) => {
    const ordinal = nextEntryOrdinal(changes.reading, sessionId);
    changes.insert('entry', { id, session_id: sessionId, ordinal, exercise, ...planColumns(null), sets_done: null });
    return { name: { id: 'exerciseAdded', values: { exercise } }, value: {} };
  });
  return id;
}

/** Removes a flag from its reps and from the clip, within one act; a suggestion that became it comes back. */
export function deleteFlag(changes: Changes, flagId: string): void {
  changes.removeWhere('suggestion_answer', 'flag_id', flagId);
  changes.removeWhere('flag_rep', 'flag_id', flagId);
  changes.remove('flag', { id: flagId });
}

/** What lies in the bin is still recognised by its picture. */
export const resolveMedia: Handler<'media.resolve'> = async (context, { clipId, what }) => {
  const library = context.library();
  const clip = findClipAnywhere(library.reading, clipId);
  const footage = what === 'voice' ? undefined : footageOfClip(library.reading, clipId);
  const file =
    what === 'voice'
      ? keptNarration(library, clipId)?.soundFile
      : footage && (await fileFor(context, { clip, footage, what }));
  if (!file || !existsSync(file)) {
    throw new ProblemError('not-found', 'pictureMissing', { what, clip: clip.name });
  }
  return { path: file, type: mediaType(file) };
};

async function fileFor(
  context: Context,
  {
    clip,
    footage,
    what,
  }: { readonly clip: ClipRow; readonly footage: FootageRow; readonly what: 'clip' | 'poster' | 'filmstrip' },
): Promise<string | null> {
  if (what !== 'clip') return pictureOfClip(context, { clip, footage, what });
  const copy = footage.plays === 'proxy' ? 'playable' : 'original';
  if (await isChangedOnDisk(context.library(), footage, copy, 'trustLength')) {
    throw new ProblemError('bad-media', 'clipFileChanged', { clip: clip.name });
  }
  const name = copy === 'playable' ? footage.proxy_file : footage.file;
  return name && path.join(context.library().folder.clips, name);
}
