import { acrossCameras, type CameraOfSet } from '../cameras/cameraClock.ts';
import { frameStartUs, nearestFrame } from '../time/frames.ts';
import type { FrameTable } from '../time/frameTable.ts';
import type { Clip, Entry } from './review.ts';

/** The clip that leads the set a clip shows: itself, unless it shows the set of another clip of the entry from another side. */
export function leadOf(clips: readonly Clip[], clip: Clip): Clip {
  const { sameSet } = clip;
  return (sameSet && clips.find(({ id }) => id === sameSet.clip)) ?? clip;
}

/** The sets that clips show, in order: the clip that leads each, and those that show it from another side. */
export function setsOf(clips: readonly Clip[]): { readonly lead: Clip; readonly others: readonly Clip[] }[] {
  return clips
    .filter((clip) => leadOf(clips, clip) === clip)
    .map((lead) => ({ lead, others: clips.filter((clip) => clip !== lead && leadOf(clips, clip) === lead) }));
}

/** Every clip of the set that a clip shows, the leading one first. */
export function clipsOfSet(clips: readonly Clip[], clip: Clip): readonly Clip[] {
  const lead = leadOf(clips, clip);
  const set = setsOf(clips).find((one) => one.lead === lead);
  return set === undefined ? [clip] : [set.lead, ...set.others];
}

/**
 * An entry as if each set had been filmed by one camera: flags and ticks of the other cameras stand on the clip that leads, under the
 * same rep numbers, and the other clips are gone. What judges reps reads this; what tells of moments reads the entry itself.
 */
export function asOneCamera(entry: Entry): Entry {
  const { clips } = entry;
  if (!clips.some(({ sameSet }) => sameSet !== undefined)) return entry;
  const leads = new Map(clips.map((clip) => [clip.id, leadOf(clips, clip).id]));
  const onLead = <T extends { readonly clip: string }>(mark: T): T => ({
    ...mark,
    clip: leads.get(mark.clip) ?? mark.clip,
  });
  return {
    ...entry,
    clips: setsOf(clips).map(({ lead }) => lead),
    flags: entry.flags.map(onLead),
    ticks: entry.ticks.map(onLead),
  };
}

type Filmed = { readonly clip: Clip; readonly table: FrameTable };

/** The frame of another camera of the set that shows the moment of a frame; the nearest that it has. */
export function frameOnCamera(frame: number, from: Filmed, to: Filmed): number {
  const us = acrossCameras(frameStartUs(from.table, frame), cameraOf(from.clip), cameraOf(to.clip));
  return nearestFrame(to.table, us);
}

const cameraOf = ({ realTimeFactor, sameSet }: Clip): CameraOfSet => ({
  realTimeFactor,
  offsetUs: sameSet?.offsetUs ?? 0,
});
