import type { NarrationTrack } from './narration.ts';

/** A flag that can be captioned: the frame it was made at, and how long its words take to read. */
export type CaptionedFlag = { readonly id: string; readonly frame: number; readonly readingUs: number };

/** Flags whose words are up together, from one time of the sound to another. */
export type CaptionCue = { readonly flagIds: readonly string[]; readonly fromUs: number; readonly untilUs: number };

/** Playing may pass over as many frames between two pictures; a larger leap is a jump, and shows nothing of what lies between. */
const mostPassed = 4;

type Visit = { readonly id: string; readonly fromUs: number; untilUs: number };

/**
 * When the words of flags are up: from each time that a flag's frame comes on screen, or is played over, for as long as that frame stays, and
 * long enough to be read, but no longer than until the next flag's frame comes.
 */
export function captionCues(
  { frames, lastsUs }: NarrationTrack,
  flags: readonly CaptionedFlag[],
): readonly CaptionCue[] {
  const visits: Visit[] = [];
  let before: number | null = null;
  for (const [index, [atUs, frame]] of frames.entries()) {
    const goneUs = frames[index + 1]?.[0] ?? lastsUs;
    for (const flag of flags) {
      if (!reaches(before, frame, flag.frame)) continue;
      const untilUs = Math.max(atUs + flag.readingUs, flag.frame === frame ? goneUs : 0);
      visits.push({ id: flag.id, fromUs: atUs, untilUs: Math.min(lastsUs, untilUs) });
    }
    before = frame;
  }
  return cuesOf(visits);
}

/** Whether going from one frame to the next shows, or passes over, a flag's frame. */
function reaches(before: number | null, frame: number, flagged: number): boolean {
  if (before === frame) return false;
  if (frame === flagged) return true;
  if (before === null || Math.abs(frame - before) > mostPassed) return false;
  return (before < flagged && flagged < frame) || (frame < flagged && flagged < before);
}

/** One cue for all that begin at once; each ends where the next begins, and the same again goes on. */
function cuesOf(visits: readonly Visit[]): readonly CaptionCue[] {
  const cues: { readonly flagIds: string[]; readonly fromUs: number; untilUs: number }[] = [];
  for (const { id, fromUs, untilUs } of visits) {
    const last = cues.at(-1);
    if (last !== undefined && last.fromUs === fromUs) {
      last.flagIds.push(id);
      last.untilUs = Math.max(last.untilUs, untilUs);
    } else if (last !== undefined && fromUs < last.untilUs && last.flagIds.length === 1 && last.flagIds[0] === id) {
      last.untilUs = Math.max(last.untilUs, untilUs);
    } else {
      if (last !== undefined) last.untilUs = Math.min(last.untilUs, fromUs);
      cues.push({ flagIds: [id], fromUs, untilUs });
    }
  }
  return cues.filter(({ fromUs, untilUs }) => untilUs > fromUs);
}

/** The flags whose words are up at a time; none outside of every cue. */
export const captionAt = (cues: readonly CaptionCue[], us: number): readonly string[] =>
  cues.find(({ fromUs, untilUs }) => fromUs <= us && us < untilUs)?.flagIds ?? [];
