import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { type Equipment, isAtHand } from '../exercises/equipment.ts';
import type { Exercise } from '../exercises/exercise.ts';
import type { Review } from '../review/review.ts';
import type { ProgrammeFinding } from './finding.ts';
import { idsOf, isUnloaded, type Lift, mostReps, namesOf } from './lift.ts';

/** A step towards an exercise, with why it stands there. */
type Rung = { readonly exercise: Exercise; readonly why: string };

type Context = {
  readonly lifts: readonly Lift[];
  readonly catalogue: Catalogue;
  readonly equipment: Equipment | null;
  readonly trainee: Review['trainee'];
};

/** The easier exercises of one that are at hand, best first; those known in words alone are no exercises. */
function rungsOf({ ladder }: Exercise, { catalogue, equipment }: Context): Rung[] {
  return ladder.easier.flatMap(({ exercise: id, why }) => {
    const exercise = findExercise(catalogue, id);
    return exercise === undefined || !isAtHand(exercise, equipment) ? [] : [{ exercise, why }];
  });
}

/**
 * Steps towards a lift that can't be done well yet: one ladder for the lift, in rank order, with why. Also what is better
 * than a band's help, where that is at hand. Nothing where the best of these steps is in the session already.
 */
export function ladderFindings(context: Context): ProgrammeFinding[] {
  const { lifts } = context;
  const first = lifts.filter((lift, at) => lifts.findIndex(({ exercise }) => exercise === lift.exercise) === at);
  return first.flatMap((lift): ProgrammeFinding[] => {
    const own = lifts.filter(({ exercise }) => exercise === lift.exercise);
    if (isBandAssisted(lift.exercise)) {
      return findingOf(
        { id: 'bandAssisted', restsOn: 'plan', own, rungs: betterThanBand(lift.exercise, context) },
        lifts,
      );
    }
    const restsOn = groundOf(lift, context.trainee);
    return restsOn === null
      ? []
      : findingOf({ id: 'ladder', restsOn, own, rungs: rungsOf(lift.exercise, context) }, lifts);
  });
}

/** A new trainee's sets of up to this many reps are at the limit of what they can do. */
const fewestFromNew = 5;
/** The same for growth, of anyone. */
const fewestForGrowth = 4;
/** Marked reps of a set in which hardly any was done. */
const hardlyAny = 2;

/** What says that a lift without load can't be done well yet: so few planned reps, or so few of them on the film. */
function groundOf(lift: Lift, { goal, experience }: Review['trainee']): 'plan' | 'film' | null {
  const { entry, exercise, hard } = lift;
  if (!isUnloaded(lift) || exercise.lowRepByDesign === true || exercise.beginsWith === 'hold') return null;
  const planned = mostReps(hard);
  const forGrowth = goal === 'growth' ? fewestForGrowth : 0;
  const few = experience === 'new' && goal !== 'skill' ? fewestFromNew : forGrowth;
  if (planned > 0 && planned <= few) return 'plan';
  const done = Math.max(0, ...entry.clips.map(({ reps }) => reps.length));
  return planned > fewestFromNew && done > 0 && done <= hardlyAny ? 'film' : null;
}

/** Help by a band, which is strongest where the lift is easiest to hold and takes the tension from the stretch. */
const isBandAssisted = ({ needs = [] }: Exercise): boolean => needs.includes('band');

/** What stands before a band's help on the ladder of the same lift. */
function betterThanBand(exercise: Exercise, context: Context): Rung[] {
  const target = context.catalogue.exercises.find(
    ({ ladder, pattern }) =>
      pattern === exercise.pattern && ladder.easier.some(({ exercise: id }) => id === exercise.id),
  );
  const rungs = target === undefined ? [] : rungsOf(target, context);
  const at = rungs.findIndex((rung) => rung.exercise === exercise);
  return rungs.slice(0, Math.max(0, at)).filter((rung) => !isBandAssisted(rung.exercise));
}

/** Most steps that a finding names: a whole ladder, or what is better than one of them. */
const mostNamed = { ladder: 6, bandAssisted: 3 } as const;

type Found = {
  readonly id: 'ladder' | 'bandAssisted';
  readonly restsOn: 'plan' | 'film';
  /** The entries of the lift. */
  readonly own: readonly Lift[];
  readonly rungs: readonly Rung[];
};

function findingOf({ id, restsOn, own, rungs }: Found, lifts: readonly Lift[]): ProgrammeFinding[] {
  const isThere = ({ exercise }: Rung): boolean => lifts.some((lift) => lift.exercise === exercise);
  const [lift] = own;
  const [best] = rungs;
  if (lift === undefined || best === undefined || isThere(best)) return [];
  const named = rungs.filter((rung) => !isThere(rung)).slice(0, mostNamed[id]);
  const { entry, exercise } = lift;
  return [
    {
      id: `ladder-${entry.id}`,
      kind: 'ladder',
      weight: 'prefer',
      restsOn,
      entryIds: idsOf(own),
      message: {
        id,
        values: {
          exercise: exercise.name,
          names: namesOf(named),
          whys: named.map(({ why }) => why),
          count: named.length,
        },
      },
      advice: { kind: 'exercise', entryId: entry.id, to: named.map((rung) => rung.exercise.id) },
    },
  ];
}
