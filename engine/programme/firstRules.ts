import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { Exercise, Goal } from '../exercises/exercise.ts';
import type { EqualPlan } from '../review/plan.ts';
import type { Entry, Review } from '../review/review.ts';
import type { Severity } from '../rubric/rubric.ts';
import { parseTempo, type Tempo } from '../time/tempo.ts';

/**
 * The rules by which a plan costs points under versions 1 and 2 of the rubric. They never change, so that a session keeps
 * the grade it got; what is advised today is `programmeFindings`.
 */
type Planned = {
  readonly entry: Entry;
  readonly exercise: Exercise;
  readonly plan: EqualPlan | undefined;
  readonly tempo: Tempo | null;
};

/** The severity of everything that the first rules find in a plan; empty for a session without any plan. */
export function firstRuleSeverities(review: Review, catalogue: Catalogue): Severity[] {
  if (!review.entries.some((entry) => entry.plan !== undefined)) return [];
  const entries = review.entries.flatMap((entry) => plannedOf(entry, catalogue));
  const { goal } = review.trainee;
  return [
    ...entries.filter((one) => outOfRange(one, goal)).map((): Severity => 'adjust'),
    ...entries.filter((one) => isEasy(one, goal)).map((): Severity => 'prefer'),
    ...(goal === 'strength' ? strengthOrder(entries) : []),
    ...pairs(entries.filter(isHeavy))
      .filter(doublesLoad)
      .map((): Severity => 'prefer'),
    ...(goal === 'growth' ? stretchedEnd(entries, catalogue) : []),
  ];
}

function plannedOf(entry: Entry, catalogue: Catalogue): Planned[] {
  const exercise = findExercise(catalogue, entry.exercise);
  if (exercise === undefined) return [];
  const [first] = entry.plan?.sets ?? [];
  const plan = first && { ...first, sets: entry.plan?.sets.length ?? 0 };
  return [{ entry, exercise, plan, tempo: plan?.tempo === undefined ? null : parseTempo(plan.tempo) }];
}

type Pair = readonly [Planned, Planned];

const pairs = (entries: readonly Planned[]): Pair[] =>
  entries.flatMap((earlier, i) => entries.slice(i + 1).map((later) => [earlier, later] as const));

const shareMuscles = ([one, other]: Pair): boolean =>
  one.exercise.muscles.direct.some((muscle) => other.exercise.muscles.direct.includes(muscle));

const repsFor = { growth: [5, 30], strength: [1, 6] } as const;

function outOfRange({ exercise, plan }: Planned, goal: Goal): boolean {
  if (plan === undefined || exercise.beginsWith === 'hold' || goal === 'skill') return false;
  if (goal === 'strength' && !exercise.compound) return false;
  const [from, to] = repsFor[goal];
  return plan.reps < from || plan.reps > to;
}

const isEasy = ({ plan }: Planned, goal: Goal): boolean => goal === 'growth' && (plan?.repsInReserve ?? 0) > 4;

function strengthOrder(entries: readonly Planned[]): Severity[] {
  const shared = pairs(entries).filter(shareMuscles);
  const isolationFirst = shared.filter(([one, other]) => !one.exercise.compound && other.exercise.compound);
  const lightFirst = shared.filter(
    ([one, other]) =>
      one.exercise.compound && other.exercise.compound && (one.plan?.reps ?? 0) > (other.plan?.reps ?? 500) + 2,
  );
  const climbing = entries.filter(({ entry }) => {
    const loads = entry.clips.flatMap(({ loadKg }) => loadKg ?? []);
    const [first, last] = [loads[0], loads.at(-1)];
    return loads.length > 1 && first !== undefined && last !== undefined && last > first * 1.05;
  });
  return [
    ...isolationFirst.map((): Severity => 'adjust'),
    ...[...lightFirst, ...climbing].map((): Severity => 'prefer'),
  ];
}

const isHeavy = ({ exercise, plan }: Planned): boolean =>
  plan !== undefined && exercise.compound && plan.reps <= 8 && (plan.repsInReserve ?? 0) <= 3;

const doublesLoad = (pair: Pair): boolean => {
  const [one, other] = pair;
  return (
    one.exercise.id !== other.exercise.id && shareMuscles(pair) && (one.plan?.sets ?? 0) + (other.plan?.sets ?? 0) > 2
  );
};

/** For growth: what keeps a muscle from being loaded where it is long; each costs a `prefer`. */
function stretchedEnd(entries: readonly Planned[], catalogue: Catalogue): Severity[] {
  const present = new Set(entries.map(({ exercise }) => exercise.id));
  const kinds = entries.filter((one, i) => entries.findIndex((other) => other.exercise === one.exercise) === i);
  const hardestShort = kinds.filter(({ exercise }) => {
    const variants = exercise.ladder.betterSuited.map((variant) => variant.exercise);
    const known = variants.some((id) => findExercise(catalogue, id) !== undefined);
    return exercise.hardestAt === 'shortened' && known && !variants.some((id) => present.has(id));
  });
  const cut = kinds.filter(({ exercise: { rangeCut } }) => {
    const fuller = rangeCut?.fuller === undefined ? undefined : findExercise(catalogue, rangeCut.fuller);
    return fuller !== undefined && !present.has(fuller.id);
  });
  const muscles = [...new Set(entries.flatMap(({ exercise }) => exercise.muscles.direct))].map((muscle) =>
    entries.filter(({ exercise }) => exercise.muscles.direct.includes(muscle)),
  );
  const found = [
    ...hardestShort,
    ...entries.filter(pausesShort),
    ...muscles.filter(holdsShort),
    ...cut,
    ...muscles.filter(allShort),
  ];
  return found.map(() => 'prefer');
}

const pausesShort = ({ exercise, tempo }: Planned): boolean =>
  tempo !== null &&
  tempo.pauseShortenedS > 0 &&
  tempo.pauseStretchedS === 0 &&
  exercise.hardestAt !== 'shortened' &&
  exercise.targets.tempo.growth.pauseStretchedS[1] > 0;

const holdsShort = (own: readonly Planned[]): boolean =>
  own.filter(({ tempo }) => (tempo?.pauseShortenedS ?? 0) >= 2).length > 1 &&
  !own.some(({ tempo }) => (tempo?.pauseStretchedS ?? 0) > 0);

const allShort = (own: readonly Planned[]): boolean =>
  new Set(own.map(({ exercise }) => exercise.id)).size > 1 &&
  own.every(({ exercise }) => exercise.hardestAt === 'shortened');
