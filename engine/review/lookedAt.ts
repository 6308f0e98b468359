import type { CriterionId } from '../rubric/rubric.ts';
import { leadOf, setsOf } from './camerasOfSet.ts';
import { isJudging, repIndices } from './parts.ts';
import type { Clip, Entry, Reps } from './review.ts';

/** Names of a clip's reps within its entry, or of its set where no rep is marked. */
const unitsOfClip = (clip: Clip): string[] =>
  clip.reps.length === 0 ? [`${clip.id} set`] : repIndices(clip).map((rep) => `${clip.id} ${rep}`);

/** Every rep of an entry, or set without marked reps, by a name of its own. */
export const unitNames = (entry: Entry): string[] => setsOf(entry.clips).flatMap(({ lead }) => unitsOfClip(lead));

/** The reps, or sets without marked reps, that a flag or tick speaks of. */
export function unitsSpokenOf(
  entry: Entry,
  { clip: id, reps }: { readonly clip: string; readonly reps: Reps },
): string[] {
  const shown = entry.clips.find((one) => one.id === id);
  if (shown === undefined) return [];
  const clip = leadOf(entry.clips, shown);
  const all = unitsOfClip(clip);
  if (reps === 'set' || clip.reps.length === 0) return all;
  const named = new Set(reps.map((rep) => `${clip.id} ${rep}`));
  return all.filter((unit) => named.has(unit));
}

/** The reps, or sets without marked reps, on which somebody looked at a criterion: those with a flag that judges, or a tick, of it. */
export function unitsLookedAt(entry: Entry, criterion: CriterionId): ReadonlySet<string> {
  return new Set(
    [...entry.flags.filter(isJudging), ...entry.ticks]
      .filter((one) => one.criterion === criterion)
      .flatMap((one) => unitsSpokenOf(entry, one)),
  );
}
