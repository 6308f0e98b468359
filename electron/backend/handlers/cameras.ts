import { existsSync } from 'node:fs';
import path from 'node:path';
import { alignReps } from '../../../engine/cameras/alignReps.ts';
import { alignSounds } from '../../../engine/cameras/alignSounds.ts';
import { offsetBetween } from '../../../engine/cameras/cameraClock.ts';
import { clockUsAt, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { CheckedParams, Result } from '../../contract/requests.ts';
import { assertUnchanged } from '../context/changedFiles.ts';
import type { Context } from '../context/context.ts';
import { clipToMeasure } from '../measure/clipToMeasure.ts';
import { measurementOfClip } from '../measure/measurementOfClip.ts';
import { readMonoSound } from '../media/read/monoSound.ts';
import { camerasOf, joinReps } from '../store/cameras.ts';
import { type ClipHome, findClip } from '../store/clips.ts';
import { type FootageRow, findFootage } from '../store/footage.ts';
import { readFrameTable } from '../store/frameTables.ts';
import { listReps, repOf } from '../store/reps.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';

type Laid = { readonly by: Result<'cameras.pair'>['by']; readonly offsetUs: number };

/** A clip of the pair with its footage, its frames and its file. */
type Camera = {
  readonly clip: ClipHome;
  readonly footage: FootageRow;
  readonly table: FrameTable;
  readonly file: string | null;
};

export const pairCameras: Handler<'cameras.pair'> = async (context, { leadId, clipId, by }) => {
  const lead = cameraOf(context, leadId);
  const other = cameraOf(context, clipId);
  assertPairable(context, lead.clip, other.clip);
  const laid = await layTogether(context, lead, other, by);
  return actOnSession(context, lead.clip.session_id, (changes) => {
    changes.update('clip', { id: clipId }, { same_set_as: leadId, same_set_offset_us: laid.offsetUs });
    joinReps(changes, findClip(changes.reading, leadId), findClip(changes.reading, clipId));
    return {
      name: { id: 'camerasPaired', values: { clip: other.clip.name, lead: lead.clip.name } },
      value: { by: laid.by },
    };
  });
};

export const partCameras: Handler<'cameras.part'> = (context, { clipId }) => {
  const clip = findClip(context.library().reading, clipId);
  if (clip.same_set_as === null) throw new ProblemError('conflict', 'notPaired', { clip: clip.name });
  return actOnSession(context, clip.session_id, (changes) => {
    changes.update('clip', { id: clipId }, { same_set_as: null, same_set_offset_us: null });
    for (const rep of listReps(changes.reading, clipId)) changes.update('rep', { id: rep.id }, { same_rep: null });
    return { name: { id: 'camerasParted', values: { clip: clip.name } }, value: {} };
  });
};

function cameraOf(context: Context, clipId: string): Camera {
  const { reading, folder } = context.library();
  const clip = findClip(reading, clipId);
  const footage = clip.footage_id === null ? undefined : findFootage(reading, clip.footage_id);
  const table = footage && readFrameTable(reading, footage.id, 'original');
  if (!footage || !table) throw new ProblemError('not-found', 'noFramesInLibrary', { clip: clip.name });
  const file = footage.file ? path.join(folder.clips, footage.file) : null;
  return { clip, footage, table, file: file !== null && existsSync(file) ? file : null };
}

/** Both show one exercise of one session, and neither is part of another set already, except of the very same. */
function assertPairable(context: Context, lead: ClipHome, clip: ClipHome): void {
  const { reading } = context.library();
  if (lead.id === clip.id || lead.entry_id !== clip.entry_id) {
    throw new ProblemError('conflict', 'pairElsewhere', { clip: clip.name, lead: lead.name });
  }
  const taken = camerasOf(reading, clip).find(({ id }) => id !== clip.id && id !== lead.id);
  if (taken !== undefined || lead.same_set_as !== null) {
    throw new ProblemError('conflict', 'pairTaken', { clip: clip.name, lead: lead.name });
  }
}

async function layTogether(
  context: Context,
  lead: Camera,
  other: Camera,
  by: CheckedParams<'cameras.pair'>['by'],
): Promise<Laid> {
  if (by.how === 'frames') return { by: 'frames', offsetUs: offsetByFrames(lead, other, by) };
  const laid =
    (by.how === 'reps' ? null : await bySound(context, lead, other)) ??
    (by.how === 'sound' ? null : byReps(context, lead, other));
  if (laid !== null) return laid;
  throw new ProblemError('conflict', 'cantAlign', { clip: other.clip.name, lead: lead.clip.name });
}

function offsetByFrames(
  lead: Camera,
  other: Camera,
  at: { readonly leadFrame: number; readonly frame: number },
): number {
  for (const [{ clip, table }, frame] of [
    [lead, at.leadFrame],
    [other, at.frame],
  ] as const) {
    if (frame >= table.ticks.length) throw new ProblemError('conflict', 'noFrame', { clip: clip.name, frame });
  }
  return offsetBetween(
    { us: frameStartUs(lead.table, at.leadFrame), realTimeFactor: lead.clip.real_time_factor },
    { us: frameStartUs(other.table, at.frame), realTimeFactor: other.clip.real_time_factor },
  );
}

/** Sound is of the clip's own clock; slow motion has none that is heard in real time. Throws `bad-media` for a file that was changed. */
async function bySound(context: Context, lead: Camera, other: Camera): Promise<Laid | null> {
  const slow = [lead, other].some(({ clip }) => clip.real_time_factor !== 1);
  if (slow || lead.file === null || other.file === null) return null;
  for (const { footage } of [lead, other]) await assertUnchanged(context.library(), footage, 'readUnknown');
  const tools = await context.mediaTools();
  const [sound, another] = [
    await readMonoSound(tools, lead.file, lead.table),
    await readMonoSound(tools, other.file, other.table),
  ];
  const found = alignSounds(sound, another);
  if (found === null) return null;
  return { by: 'sound', offsetUs: offsetOfClocks(lead, other, found.offsetS) };
}

/** From seconds since each clip's first frame to the offset of their media clocks. */
const offsetOfClocks = (lead: Camera, other: Camera, offsetS: number): number =>
  offsetBetween(
    { us: frameStartUs(lead.table, 0), realTimeFactor: lead.clip.real_time_factor },
    { us: frameStartUs(other.table, 0), realTimeFactor: other.clip.real_time_factor },
  ) + Math.round(offsetS * 1_000_000);

function byReps(context: Context, lead: Camera, other: Camera): Laid | null {
  const offsetS = alignReps(turnsOf(context, lead), turnsOf(context, other));
  return offsetS === null ? null : { by: 'reps', offsetUs: offsetOfClocks(lead, other, offsetS) };
}

/** When a clip's reps start and turn, in seconds of real time since its first frame: as measured, else as marked. */
function turnsOf(context: Context, { clip, table }: Camera): number[] {
  const library = context.library();
  const measured = measurementOfClip(library, clipToMeasure(context, library.reading, clip.id))?.reps ?? [];
  const realS = (mediaS: number): number => mediaS / clip.real_time_factor;
  if (measured.length > 0) {
    return measured.flatMap(({ startS, phases }) =>
      [startS, ...(phases.eccentric ? [phases.eccentric.endS] : [])].map(realS),
    );
  }
  return listReps(library.reading, clip.id).flatMap((row, index) => {
    const { start, stretchedEnd } = repOf(row, index + 1);
    return [start, stretchedEnd].flatMap((moment) =>
      moment !== undefined && 'frame' in moment ? realS(clockUsAt(table, moment.frame) / 1_000_000) : [],
    );
  });
}
