import { type JudgingFlag, repIndices } from '../review/parts.ts';
import type { Entry, Tick } from '../review/review.ts';

/** A unit of judgement: a marked rep of a clip, or the clip as one unit (`rep` null) when none is marked. */
export type Unit = { readonly clip: string; readonly rep: number | null };

/** Every unit of an entry, clip by clip, reps ascending. */
export function unitsOf(entry: Entry): Unit[] {
  return entry.clips.flatMap((clip): Unit[] =>
    clip.reps.length === 0 ? [{ clip: clip.id, rep: null }] : repIndices(clip).map((rep) => ({ clip: clip.id, rep })),
  );
}

/** A unit with the flags of one criterion that touch it. */
export type FlaggedUnit = { readonly unit: Unit; readonly flags: readonly JudgingFlag[] };

/** Flags of one clip: those for the whole set, and those of each rep. */
type OfClip = { readonly set: JudgingFlag[]; readonly reps: Map<number, JudgingFlag[]>; readonly all: JudgingFlag[] };

function addTo(reps: Map<number, JudgingFlag[]>, rep: number, flag: JudgingFlag): void {
  const there = reps.get(rep);
  if (there === undefined) reps.set(rep, [flag]);
  else there.push(flag);
}

function byClip(flags: readonly JudgingFlag[]): ReadonlyMap<string, OfClip> {
  const clips = new Map<string, OfClip>();
  for (const flag of flags) {
    const own: OfClip = clips.get(flag.clip) ?? { set: [], reps: new Map(), all: [] };
    clips.set(flag.clip, own);
    own.all.push(flag);
    if (flag.reps === 'set') own.set.push(flag);
    else for (const rep of new Set(flag.reps)) addTo(own.reps, rep, flag);
  }
  return clips;
}

/**
 * The units of an entry with flags on them. A flag for the whole set touches every unit of its clip; one that lists reps
 * touches each listed rep once; on a clip without marked reps it touches the set.
 */
export function flagUnits(units: readonly Unit[], flags: readonly JudgingFlag[]): FlaggedUnit[] {
  const clips = byClip(flags);
  return units.map((unit) => {
    const own = clips.get(unit.clip);
    if (own === undefined) return { unit, flags: [] };
    return { unit, flags: unit.rep === null ? own.all : [...own.set, ...(own.reps.get(unit.rep) ?? [])] };
  });
}

/** The units that ticks of one criterion cover: a tick reaches as far as a flag with its reps would. */
export function tickedUnits(units: readonly Unit[], ticks: readonly Tick[]): ReadonlySet<Unit> {
  const clips = Map.groupBy(ticks, (tick) => tick.clip);
  const covers = ({ reps }: Tick, rep: number | null): boolean => rep === null || reps === 'set' || reps.includes(rep);
  return new Set(units.filter(({ clip, rep }) => clips.get(clip)?.some((tick) => covers(tick, rep)) === true));
}
