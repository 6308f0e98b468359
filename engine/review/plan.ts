import * as v from 'valibot';

const count = (most: number) => v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(most));
const reps = count(500);
const loadKg = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1000));
const tempo = v.pipe(v.string(), v.regex(/^\d{1,2}(\.\d)?-\d{1,2}(\.\d)?-(X|\d{1,2}(\.\d)?)-\d{1,2}(\.\d)?$/));
const repsInReserve = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(20));

/** One planned set. */
export const plannedSetSchema = v.strictObject({
  reps,
  /** Kilograms in the hands or on the back; 0 is body weight alone, absent is not stated. */
  loadKg: v.optional(loadKg),
  /** Eccentric - pause, stretched - concentric - pause, shortened, in seconds; X = as fast as control allows: "3-1-X-0". */
  tempo: v.optional(tempo),
  /** Repetitions left in reserve at the end of the set. */
  repsInReserve: v.optional(repsInReserve),
});
export type PlannedSet = v.InferOutput<typeof plannedSetSchema>;

/** What was planned for an exercise, set by set, in order. */
export const listedPlanSchema = v.strictObject({
  sets: v.pipe(v.array(plannedSetSchema), v.minLength(1), v.maxLength(50)),
});
export type Plan = v.InferOutput<typeof listedPlanSchema>;

/** The older form: a number of sets that are all alike. */
export const equalPlanSchema = v.strictObject({ sets: count(50), ...plannedSetSchema.entries });
export type EqualPlan = v.InferOutput<typeof equalPlanSchema>;

/** A plan whose sets are all alike. */
export function equalSets({ sets, ...set }: EqualPlan): Plan {
  return { sets: Array.from({ length: sets }, () => ({ ...set })) };
}

/** A plan as a file or a form gives it, in either form; read as a list of sets. */
export const planSchema = v.pipe(
  v.union([listedPlanSchema, equalPlanSchema]),
  v.transform((plan): Plan => ('reps' in plan ? equalSets(plan) : plan)),
);

/** Neighbouring sets that are alike, counted: "3 × 8 with 60 kg, then 1 × 12 with 40 kg". */
export function runsOfSets({ sets }: Plan): { readonly count: number; readonly set: PlannedSet }[] {
  const runs: { count: number; set: PlannedSet }[] = [];
  for (const set of sets) {
    const last = runs.at(-1);
    if (last !== undefined && isAlike(last.set, set)) last.count += 1;
    else runs.push({ count: 1, set });
  }
  return runs;
}

const isAlike = (one: PlannedSet, other: PlannedSet): boolean =>
  one.reps === other.reps &&
  one.loadKg === other.loadKg &&
  one.tempo === other.tempo &&
  one.repsInReserve === other.repsInReserve;

/** The tempo asked of all sets; null where none is stated or sets differ. */
export function tempoOfPlan(plan: Plan | null | undefined): string | null {
  const [first, ...others] = plan?.sets ?? [];
  return first?.tempo !== undefined && others.every(({ tempo: one }) => one === first.tempo) ? first.tempo : null;
}

/**
 * The load planned for the set that a clip shows, in kilograms: that of all sets where they have one in common; else that of the
 * set in the clip's place where every set was filmed. Undefined where it is not known which set the clip shows.
 */
export function loadAtPlaceKg(
  { sets }: Plan,
  { index, of }: { readonly index: number; readonly of: number },
): number | undefined {
  const [first, ...others] = sets;
  if (others.every(({ loadKg }) => loadKg === first?.loadKg)) return first?.loadKg;
  return of === sets.length ? sets[index]?.loadKg : undefined;
}
