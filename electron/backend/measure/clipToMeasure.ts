import { existsSync } from 'node:fs';
import path from 'node:path';
import { findExercise } from '../../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { type FrameRange, framesShown, isWhole } from '../../../engine/framing/section.ts';
import type { SetUp } from '../../../engine/recording/setUp.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import type { UprightPicture } from '../media/probe/streams.ts';
import { type ClipHome, findClip } from '../store/clips.ts';
import type { Reading } from '../store/connection.ts';
import { type FootageRow, findFootage } from '../store/footage.ts';
import { readFrameTable } from '../store/frameTables.ts';
import { sectionOf, uprightOf } from '../store/framing.ts';
import { readSetUp } from '../store/measuring.ts';
import type { LookedAt } from '../store/recordings.ts';
import { listReps, type RepRow } from '../store/reps.ts';
import { isClipSound } from '../store/rowDigests.ts';
import { findSession } from '../store/sessions.ts';

/** All that measuring a clip needs, apart from its recording. */
export type ClipToMeasure = {
  readonly clip: ClipHome;
  readonly setUp: SetUp;
  readonly reps: readonly RepRow[];
  /** Null: the footage, its frame times or the exercise are not known. */
  readonly source: {
    readonly footage: FootageRow;
    readonly table: FrameTable;
    readonly exercise: Exercise;
    /** The picture as it is looked at, and the frames of the clip's section. */
    readonly shown: UprightPicture;
    readonly range: FrameRange;
  } | null;
};

/** How a clip's footage is looked at: its turn, and its section where it has one. */
export function lookedAt({ clip, source }: ClipToMeasure): LookedAt {
  const frames = source !== null && !isWhole(source.range, source.table) ? source.range : null;
  return { turnDeg: clip.turn_deg, frames };
}

/** What the library knows of a clip for measuring it. Throws `not-found`, and `library-damaged` where a fault changed it. */
export function clipToMeasure(context: Context, reading: Reading, clipId: string): ClipToMeasure {
  const clip = findClip(reading, clipId);
  if (!isClipSound(reading, clipId)) throw new ProblemError('library-damaged', 'sessionDamaged');
  const catalogue = context.catalogue(findSession(reading, clip.session_id).rubric_version);
  const exercise = findExercise(catalogue, clip.exercise);
  const footage = clip.footage_id === null ? undefined : findFootage(reading, clip.footage_id);
  const table = footage && readFrameTable(reading, footage.id, 'original');
  return {
    clip,
    setUp: readSetUp(reading, clipId),
    reps: listReps(reading, clipId),
    source:
      footage && table && exercise
        ? { footage, table, exercise, shown: uprightOf(footage, clip), range: framesShown(sectionOf(clip), table) }
        : null,
  };
}

/** The file to record, with what is known of it. Throws `not-found` with a sentence when it can't be recorded. */
export function fileToRecord(context: Context, { clip, source }: ClipToMeasure) {
  const { folder } = context.library();
  if (!source?.footage.file) {
    throw new ProblemError('not-found', 'nothingToMeasure', { clip: clip.name });
  }
  const file = path.join(folder.clips, source.footage.file);
  if (!existsSync(file)) {
    throw new ProblemError('not-found', 'footageFileMissing', { file: source.footage.file, clip: clip.name });
  }
  const { footage, table, shown, range } = source;
  return {
    clip: file,
    ...{ table, shown, range },
    framesPerSecond: footage.mean_fps * footage.real_time_factor,
  };
}
