import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { type Equipment, isAtHand } from '../exercises/equipment.ts';
import type { Exercise } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from './finding.ts';
import { idsOf, isUnloaded, type Lift, namesOf } from './lift.ts';
import { primeMover, sharePrimeMover } from './primeMovers.ts';

/** Loaded hard elsewhere than at the shortened end alone. */
const isHardElsewhere = ({ hardestAt }: Exercise): boolean => hardestAt !== 'shortened';

/** Nothing suits better: a full pull-up is hardest at the top and still needs no replacement. */
const needsNoOther = ({ ladder }: Exercise): boolean => ladder.betterSuited.length === 0;

const trains = ({ muscles }: Exercise, muscle: string): boolean =>
  muscles.direct.includes(muscle) || muscles.indirect.includes(muscle);

/**
 * For growth: muscles that every lift of the session loads only where they are short, once each, with the exercises that
 * load them where they are longer. Those are what the library names as better suited to it, else the others that train the
 * same prime mover; always hardest elsewhere, and at hand. Where there is none, nothing is said.
 */
export function profileFindings(
  lifts: readonly Lift[],
  catalogue: Catalogue,
  equipment: Equipment | null,
): ProgrammeFinding[] {
  const muscles = [...new Set(lifts.flatMap(({ exercise }) => primeMover(exercise) ?? []))];
  const said = new Set<Lift>();
  /** What does the work so far: lifts of the session, and what earlier findings put beside them. */
  const working = lifts.map(({ exercise }) => exercise).filter((one) => isHardElsewhere(one) || needsNoOther(one));
  return muscles.flatMap((muscle): ProgrammeFinding[] => {
    const own = shortFor(muscle, lifts).filter((lift) => !said.has(lift));
    if (own.length === 0 || working.some((exercise) => doesTheWork(exercise, muscle, own))) return [];
    const [advised] = own
      .toReversed()
      .map((lift) => ({ lift, to: longerFor(lift.exercise, muscle, catalogue, equipment) }))
      .filter(({ lift, to }) => to.length > 0 && isWorthIt(lift, to, own));
    if (advised === undefined) return [];
    for (const lift of own) said.add(lift);
    working.push(...advised.to.slice(0, 1));
    return [findingOf(own, advised)];
  });
}

/** The lifts for a muscle that are hardest where it is short, with those that share their prime mover. */
function shortFor(muscle: string, lifts: readonly Lift[]): Lift[] {
  const short = lifts.filter(({ exercise }) => !isHardElsewhere(exercise));
  const prime = short.filter(({ exercise }) => primeMover(exercise) === muscle);
  return short.filter(
    (lift) => prime.includes(lift) || prime.some((one) => sharePrimeMover(one.exercise, lift.exercise)),
  );
}

/**
 * One exercise alone is only worth a remark where the best of the others loads the muscle hard in the stretch, or the floor takes all of its
 * load there; several that all leave the stretch out always are.
 */
const isWorthIt = (lift: Lift, to: readonly Exercise[], own: readonly Lift[]): boolean =>
  namesOf(own).length > 1 || to[0]?.hardestAt === 'stretched' || isWarmUpFor(lift, to);

/** Whether an exercise loads a muscle in the place of some lifts: directly, or with all the helpers of one of them. */
const doesTheWork = ({ muscles }: Exercise, muscle: string, own: readonly Lift[]): boolean =>
  muscles.direct.includes(muscle) ||
  (muscles.indirect.includes(muscle) &&
    own.some(({ exercise }) => {
      const helpers = exercise.muscles.indirect;
      return helpers.length > 0 && helpers.every((helper) => muscles.direct.includes(helper));
    }));

/** Most exercises that a finding names. */
const mostNamed = 3;

/** Exercises that load a muscle where it is longer than this one does, best first. */
function longerFor(
  exercise: Exercise,
  muscle: string,
  catalogue: Catalogue,
  equipment: Equipment | null,
): readonly Exercise[] {
  const named = exercise.ladder.betterSuited.flatMap(({ exercise: id }) => findExercise(catalogue, id) ?? []);
  const suits = (one: Exercise): boolean =>
    isHardElsewhere(one) && one.beginsWith !== 'hold' && isAtHand(one, equipment);
  const better = named.filter((one) => suits(one) && trains(one, muscle));
  const others = catalogue.exercises.filter((one) => suits(one) && primeMover(one) === muscle);
  return (better.length > 0 ? better : others.filter(({ hardestAt }) => hardestAt === 'stretched')).slice(0, mostNamed);
}

function findingOf(
  own: readonly Lift[],
  { lift, to }: { readonly lift: Lift; readonly to: readonly Exercise[] },
): ProgrammeFinding {
  const [better, ...others] = to.map(({ name }) => name);
  const values = {
    exercises: namesOf(own),
    count: namesOf(own).length,
    exercise: lift.exercise.name,
    better: better ?? '',
    others,
    more: others.length,
  };
  return {
    id: `short-end-load-${lift.entry.id}`,
    kind: 'shortened-end-load',
    severity: 'prefer',
    restsOn: 'plan',
    entryIds: idsOf(own),
    message: { id: isWarmUpFor(lift, to) ? 'shortenedEndWarmUp' : 'shortenedEndLoad', values },
    advice: { kind: 'exercise', entryId: lift.entry.id, to: to.map(({ id }) => id) },
  };
}

/** Whether a lift without load is the easier form of one of some exercises, and so a way to warm up for it. */
const isWarmUpFor = (lift: Lift, others: readonly Exercise[]): boolean =>
  isUnloaded(lift) && others.some(({ ladder }) => ladder.easier.some(({ exercise: id }) => id === lift.exercise.id));
