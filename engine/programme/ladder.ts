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

/**
 * The easier exercises of one that are at hand, best first. Those known in words alone are no exercises, and one that the
 * library would have give way to this one again is no step towards it.
 */
function rungsOf({ id: target, ladder }: Exercise, { catalogue, equipment }: Context): Rung[] {
  return ladder.easier.flatMap(({ exercise: id, why }) => {
    const exercise = findExercise(catalogue, id);
    if (exercise === undefined || !isAtHand(exercise, equipment)) return [];
    return exercise.ladder.betterSuited.some((better) => better.exercise === target) ? [] : [{ exercise, why }];
  });
}

/** A ladder, and the lifts that it leads to. */
type Found = {
  readonly id: 'ladder' | 'bandAssisted';
  readonly restsOn: 'plan' | 'film';
  readonly own: readonly Lift[];
  readonly rungs: readonly Rung[];
};

/**
 * Steps towards a lift that can't be done well yet: one ladder in rank order, with why, for lifts that share it. Also what is
 * better than a band's help, where that is at hand. Nothing where the best of these steps is in the session already.
 */
export function ladderFindings(context: Context): ProgrammeFinding[] {
  const found = context.lifts.flatMap((lift) => foundFor(lift, context));
  const alike = Map.groupBy(found, ({ id, restsOn, rungs }) =>
    [id, restsOn, ...rungs.map(({ exercise }) => exercise.id)].join(' '),
  );
  return [...alike.values()].flatMap(([first, ...others]) =>
    first === undefined
      ? []
      : findingOf({ ...first, own: [first, ...others].flatMap(({ own }) => own) }, context.lifts),
  );
}

function foundFor(lift: Lift, context: Context): Found[] {
  if (isBandAssisted(lift.exercise)) {
    return [{ id: 'bandAssisted', restsOn: 'plan', own: [lift], rungs: betterThanBand(lift.exercise, context) }];
  }
  const restsOn = groundOf(lift, context.trainee);
  if (restsOn === null || (context.trainee.experience !== 'new' && isOnLadder(lift, context.lifts))) return [];
  return [{ id: 'ladder', restsOn, own: [lift], rungs: rungsOf(lift.exercise, context) }];
}

/** Whether a step towards a lift is in the session beside it. */
export const isOnLadder = ({ exercise }: Lift, lifts: readonly Lift[]): boolean =>
  exercise.ladder.easier.some(({ exercise: id }) => lifts.some((lift) => lift.exercise.id === id));

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
  if (target === undefined) return [];
  const { ladder } = target;
  const at = ladder.easier.findIndex(({ exercise: id }) => id === exercise.id);
  const before = { ...target, ladder: { ...ladder, easier: ladder.easier.slice(0, at) } };
  return rungsOf(before, context).filter((rung) => !isBandAssisted(rung.exercise));
}

/** Most steps that a finding names: a whole ladder, or what is better than one of them. */
const mostNamed = { ladder: 6, bandAssisted: 3 } as const;

function findingOf({ id, restsOn, own, rungs }: Found, lifts: readonly Lift[]): ProgrammeFinding[] {
  const isThere = ({ exercise }: Rung): boolean => lifts.some((lift) => lift.exercise === exercise);
  const [lift] = own;
  const [best] = rungs;
  if (lift === undefined || best === undefined || isThere(best)) return [];
  const named = rungs.filter((rung) => !isThere(rung)).slice(0, mostNamed[id]);
  const { entry } = lift;
  return [
    {
      id: `ladder-${entry.id}`,
      kind: 'ladder',
      severity: 'prefer',
      restsOn,
      entryIds: idsOf(own),
      message: {
        id,
        values: {
          exercises: namesOf(own),
          names: namesOf(named),
          whys: named.map(({ why }) => why),
          count: named.length,
        },
      },
      advice: { kind: 'exercise', entryId: entry.id, to: named.map((rung) => rung.exercise.id) },
    },
  ];
}
