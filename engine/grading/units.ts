import type { Entry, Flag } from '../review/index.ts';
import { repIndices } from '../review/index.ts';
import type { CriterionId } from '../rubric/index.ts';

/** A unit of judgement: a marked rep of a clip, or the clip as one unit (`rep` null) when none is marked. */
export type Unit = { readonly clip: string; readonly rep: number | null };

/** Every unit of an entry, clip by clip, reps ascending. */
export function unitsOf(entry: Entry): Unit[] {
  return entry.clips.flatMap((clip): Unit[] =>
    clip.reps.length === 0 ? [{ clip: clip.id, rep: null }] : repIndices(clip).map((rep) => ({ clip: clip.id, rep })),
  );
}

/** A unit with the flags of one criterion that touch it. */
export type FlaggedUnit = { readonly unit: Unit; readonly flags: readonly Flag[] };

/**
 * The units of an entry with the flags of a criterion on them. A flag for the whole set touches every unit of
 * its clip; one that lists reps touches each listed rep once; on a clip without marked reps it touches the set.
 */
export function flagUnits(entry: Entry, criterion: CriterionId): FlaggedUnit[] {
  const flags = entry.flags
    .filter((flag) => flag.criterion === criterion)
    .map((flag) => ({ flag, reps: flag.reps === 'set' ? null : new Set(flag.reps) }));
  return unitsOf(entry).map((unit) => ({
    unit,
    flags: flags
      .filter(({ flag, reps }) => flag.clip === unit.clip && (reps === null || unit.rep === null || reps.has(unit.rep)))
      .map(({ flag }) => flag),
  }));
}
