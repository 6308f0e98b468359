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

/** Help by a band, which is strongest where the lift is easiest to hold and takes the tension from the stretch. */
const isBandAssisted = ({ needs = [] }: Exercise): boolean => needs.includes('band');

/**
 * Steps towards a lift that can't be done well yet: one ladder for the lift, in rank order, with why. Also what is better
 * than a band's help, where that is at hand. Nothing where a step of the ladder is in the session already.
 */
export function ladderFindings(context: Context): ProgrammeFinding[] {
  const { lifts } = context;
  const present = new Set(lifts.map(({ exercise }) => exercise.id));
  const first = lifts.filter((lift, at) => lifts.findIndex(({ exercise }) => exercise === lift.exercise) === at);
  return first.flatMap((lift): ProgrammeFinding[] => {
    if (isBandAssisted(lift.exercise)) return betterThanBand(lift, context);
    const ground = groundOf(lift, context.trainee);
    const rungs = ground === null ? [] : rungsOf(lift.exercise, context);
    if (ground === null || rungs.length === 0 || rungs.some(({ exercise }) => present.has(exercise.id))) return [];
    return [findingOf('ladder', [lift], rungs, ground)];
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
  const few = experience === 'new' && goal !== 'skill' ? fewestFromNew : goal === 'growth' ? fewestForGrowth : 0;
  if (planned > 0 && planned <= few) return 'plan';
  const done = Math.max(0, ...entry.clips.map(({ reps }) => reps.length));
  return planned > fewestFromNew && done > 0 && done <= hardlyAny ? 'film' : null;
}

/** What stands before a band's help on the ladder of the same lift. */
function betterThanBand(lift: Lift, context: Context): ProgrammeFinding[] {
  const { lifts, catalogue } = context;
  const target = catalogue.exercises.find(
    ({ ladder, pattern }) =>
      pattern === lift.exercise.pattern && ladder.easier.some(({ exercise }) => exercise === lift.exercise.id),
  );
  if (target === undefined) return [];
  const all = rungsOf(target, context);
  const at = all.findIndex(({ exercise }) => exercise === lift.exercise);
  const better = all.slice(0, Math.max(0, at)).filter(({ exercise }) => !isBandAssisted(exercise));
  if (better.length === 0 || lifts.some((one) => better.some(({ exercise }) => exercise === one.exercise))) return [];
  const same = lifts.filter((one) => one !== lift && one.exercise === lift.exercise);
  return [findingOf('bandAssisted', [lift, ...same], better, 'plan')];
}

/** Most steps that a finding names. */
const mostNamed = 4;

function findingOf(
  id: 'ladder' | 'bandAssisted',
  lifts: readonly [Lift, ...Lift[]],
  rungs: readonly Rung[],
  restsOn: 'plan' | 'film',
): ProgrammeFinding {
  const [{ entry, exercise }] = lifts;
  const named = rungs.slice(0, mostNamed);
  return {
    id: `ladder-${entry.id}`,
    kind: 'ladder',
    weight: 'prefer',
    restsOn,
    entryIds: idsOf(lifts),
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
  };
}
