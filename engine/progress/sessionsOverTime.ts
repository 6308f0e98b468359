import type { Catalogue } from '../exercises/catalogue.ts';
import { gradeSession } from '../grading/gradeSession.ts';
import type { Entry, Flag, Review } from '../review/review.ts';
import { type CriterionId, type Weight, weights } from '../rubric/rubric.ts';

/** How often and how heavily a fault was flagged in one exercise of one session. */
export type FaultLoad = {
  readonly weight: Weight;
  /** Reps (or sets without marked reps) that show it, and how many there were. */
  readonly reps: number;
  readonly of: number;
};

/** What became of a fault since the session before. */
export type FaultChange = {
  readonly exercise: string;
  readonly criterion: CriterionId;
  readonly fault: string;
  /** `back`: away last time, seen in an earlier session; `gone`: seen last time, looked at now and not there. */
  readonly kind: 'new' | 'back' | 'worse' | 'same' | 'better' | 'gone';
  readonly before: FaultLoad | null;
  readonly now: FaultLoad | null;
};

type Loads = Map<string, { readonly criterion: CriterionId; readonly load: FaultLoad }>;

const unitsOfClip = (entry: Entry, clipId: string): readonly string[] => {
  const reps = entry.clips.find(({ id }) => id === clipId)?.reps ?? [];
  return reps.length === 0 ? [`${clipId} set`] : reps.map(({ index }) => `${clipId} ${index}`);
};

const unitsOfFlag = (entry: Entry, { clip, reps }: Flag): readonly string[] =>
  reps === 'set' ? unitsOfClip(entry, clip) : reps.map((rep) => `${clip} ${rep}`);

const heavier = (one: Weight, other: Weight): Weight => (weights.indexOf(one) >= weights.indexOf(other) ? one : other);

/** The named faults of an exercise in a session, over all its entries. */
function loadsOf(entries: readonly Entry[]): Loads {
  const of = entries.flatMap((entry) => entry.clips.flatMap((clip) => unitsOfClip(entry, clip.id))).length;
  const touched = new Map<string, Set<string>>();
  const loads: Loads = new Map();
  for (const entry of entries) {
    for (const flag of entry.flags) {
      if (flag.fault === null || flag.weight === 'keep') continue;
      const units = touched.get(flag.fault) ?? new Set();
      for (const unit of unitsOfFlag(entry, flag)) units.add(`${entry.id} ${unit}`);
      touched.set(flag.fault, units);
      const weight = heavier(flag.weight, loads.get(flag.fault)?.load.weight ?? 'keep');
      loads.set(flag.fault, { criterion: flag.criterion, load: { weight, reps: units.size, of } });
    }
  }
  return loads;
}

const lookedAt = (entries: readonly Entry[], criterion: CriterionId): boolean =>
  entries.some(
    ({ flags, ticks }) =>
      flags.some((flag) => flag.criterion === criterion) || ticks.some((tick) => tick.criterion === criterion),
  );

function compareLoads(before: FaultLoad, now: FaultLoad): 'worse' | 'same' | 'better' {
  const byWeight = weights.indexOf(now.weight) - weights.indexOf(before.weight);
  const byShare = now.reps / now.of - before.reps / before.of;
  // Lighter outweighs more often: the weight says what it costs.
  const difference = byWeight === 0 ? byShare : byWeight;
  if (Math.abs(difference) < 1e-9) return 'same';
  return difference < 0 ? 'better' : 'worse';
}

/**
 * Each named fault of the exercises that the session shares with the latest earlier one that has them: new, back, worse, same,
 * better (lighter, or on fewer reps) or gone. A fault of a criterion that was not looked at now is left out.
 * @param earlier the trainee's sessions before this one, oldest first
 */
export function compareSessions(review: Review, earlier: readonly Review[], catalogue: Catalogue): FaultChange[] {
  const exercises = [...new Set(review.entries.map(({ exercise }) => exercise))];
  return exercises.flatMap((exercise): FaultChange[] => {
    const inSession = (one: Review): Entry[] => one.entries.filter((entry) => entry.exercise === exercise);
    const past = earlier.map(inSession).filter((entries) => entries.some(({ clips }) => clips.length > 0));
    const previous = past.at(-1);
    if (previous === undefined) return [];
    const current = inSession(review);
    const before = loadsOf(previous);
    const now = loadsOf(current);
    const longAgo = new Set(past.slice(0, -1).flatMap((entries) => [...loadsOf(entries).keys()]));
    const known = catalogue.exercises.find(({ id }) => id === exercise)?.faults ?? [];
    return known.flatMap(({ id: fault, criterion }): FaultChange[] => {
      const was = before.get(fault)?.load ?? null;
      const is = now.get(fault)?.load ?? null;
      const change = (kind: FaultChange['kind']): FaultChange[] => [
        { exercise, criterion, fault, kind, before: was, now: is },
      ];
      if (was === null) return is === null ? [] : change(longAgo.has(fault) ? 'back' : 'new');
      if (is === null) return lookedAt(current, criterion) ? change('gone') : [];
      return change(compareLoads(was, is));
    });
  });
}

/** One session of a trainee as a point of a trend; scores null where there was none. */
export type TrendPoint = {
  readonly date: string;
  readonly session: number | null;
  readonly criteria: readonly { readonly criterion: CriterionId; readonly score: number }[];
};

/** A trainee's sessions over time: the session score, and each criterion's mean over the exercises where it was looked at. */
export function trendOf(reviews: readonly Review[], catalogue: Catalogue): TrendPoint[] {
  return [...reviews]
    .sort((a, b) => (a.session.date < b.session.date ? -1 : Number(a.session.date > b.session.date)))
    .map((review) => {
      const { state, entries } = gradeSession(review, catalogue);
      const scores = Map.groupBy(
        entries.flatMap(({ criteria }) =>
          criteria.flatMap(({ criterion, score }) => (score === null ? [] : [{ criterion, score }])),
        ),
        ({ criterion }) => criterion,
      );
      return {
        date: review.session.date,
        session: state.kind === 'none' ? null : state.score,
        criteria: [...scores].map(([criterion, all]) => ({
          criterion,
          score: all.reduce((sum, { score }) => sum + score, 0) / all.length,
        })),
      };
    });
}
