import type { Equipment } from '../exercises/equipment.ts';
import type { Severity } from '../rubric/rubric.ts';
import { type Moment, momentUs } from '../time/moment.ts';
import { setsOf } from './camerasOfSet.ts';
import type { Clip, ClipFacts, Entry, Flag, Reps, Review } from './review.ts';

/**
 * Sets done of an entry, by which its score weighs in the session: as stated, else one a clip, cameras of one set counted together, and
 * never less than one. What was planned is no evidence of what was done.
 */
export function setsDone(entry: Entry): number {
  return entry.setsDone ?? Math.max(1, setsOf(entry.clips).length);
}

/** What there was to train with: the session's own, else what the trainee usually has; null where neither is stated. */
export function equipmentOf({ session, trainee }: Pick<Review, 'session' | 'trainee'>): Equipment | null {
  return session.equipment ?? trainee.equipment ?? null;
}

/** The marked reps of a clip by index, ascending. */
export function repIndices(clip: Clip): number[] {
  return clip.reps.map((rep) => rep.index).sort((a, b) => a - b);
}

/** A clip of an entry by id. */
export function clipOf(entry: Entry, clipId: string): Clip | undefined {
  return entry.clips.find((clip) => clip.id === clipId);
}

/** The entry that holds a clip; undefined when none does. */
export function entryOfClip(review: Review, clipId: string): Entry | undefined {
  return review.entries.find((entry) => entry.clips.some((clip) => clip.id === clipId));
}

/** Reps in one canonical form: 'set', or each rep once, ascending. */
export function plainReps(reps: Reps): Reps {
  return reps === 'set' ? 'set' : [...new Set(reps)].sort((a, b) => a - b);
}

/** When the last frame of a clip goes, in media microseconds: its length, counted from its first frame. Null where the length is not known. */
export function endOfClipUs(facts: ClipFacts | undefined): number | null {
  return facts === undefined || facts.durationUs === 0 ? null : (facts.startUs ?? 0) + facts.durationUs;
}

/** A moment of a clip as media microseconds; null where the clip's facts are not known. */
export function momentUsInClip(moment: Moment, clip: Clip): number | null {
  return momentUs(moment, clip.facts);
}

/** Below 0: `a` is earlier; above 0: later; null: they can't be compared (a frame and seconds, without facts). */
export function compareMoments(a: Moment, b: Moment, clip: Clip): number | null {
  if ('ticks' in a && 'ticks' in b) return a.ticks - b.ticks || a.frame - b.frame;
  const aUs = momentUsInClip(a, clip);
  const bUs = momentUsInClip(b, clip);
  return aUs === null || bUs === null ? null : aUs - bUs;
}

/** A flag that judges: praise, or a fault of some severity. */
export type JudgingFlag = Flag & { readonly severity: Severity };

/** Whether a flag judges what it speaks of; one that doesn't is a plain note. */
export const isJudging = <Remark extends { readonly severity: Severity | null }>(
  remark: Remark,
): remark is Remark & { readonly severity: Severity } => remark.severity !== null;

/** A review with the flags that judge alone: its plain notes praise nothing and ask for nothing. */
export const judgementsIn = (review: Review): Review => ({
  ...review,
  entries: review.entries.map((entry) => ({ ...entry, flags: entry.flags.filter(isJudging) })),
});
