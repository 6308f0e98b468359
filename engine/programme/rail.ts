import type { Catalogue } from '../exercises/catalogue.ts';
import { type Equipment, isAtHand } from '../exercises/equipment.ts';
import type { Exercise } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from './finding.ts';
import { idsOf, type Lift } from './lift.ts';

/** Where a guided bar goes as it lowers; null for an upright rail, and for anything that is no rail. */
function travelOf({ targets: { path } }: Exercise): 'forward' | 'backward' | null {
  if (path.shape !== 'rail' || path.railTiltDeg === undefined || path.railTiltDeg === 0) return null;
  return path.railTiltDeg < 0 ? 'forward' : 'backward';
}

/** Faults of a lifter who faces the wrong way on a guided rail. */
const facingFaults: ReadonlySet<string> = new Set(['facesTheOtherWay']);

const hasFlag = ({ entry }: Lift, isMeant: (fault: string) => boolean): boolean =>
  entry.flags.some(({ fault, severity }) => fault !== null && severity !== 'keep' && isMeant(fault));

/**
 * Squats on a guided rail whose bar travels backward as it lowers: it pulls the trunk over, and the back rounds at the
 * bottom. For the thighs and an upright back the bar should come forward (common practice; for the hips a coach may choose
 * otherwise). Lunges are affected less and left alone. A flag that says so on the film counts too.
 */
export function railFindings(
  lifts: readonly Lift[],
  catalogue: Catalogue,
  equipment: Equipment | null,
): ProgrammeFinding[] {
  const squats = lifts.filter(({ exercise }) => exercise.pattern === 'squat' && travelOf(exercise) !== null);
  const backward = squats.filter(({ exercise }) => travelOf(exercise) === 'backward');
  const faced = squats.filter((lift) => !backward.includes(lift) && hasFlag(lift, (id) => facingFaults.has(id)));
  const own = backward.length > 0 ? backward : faced;
  const [first] = own;
  if (first === undefined) return [];
  const forward = catalogue.exercises.find(
    (one) => one.pattern === 'squat' && travelOf(one) === 'forward' && isAtHand(one, equipment),
  );
  const onFilm = own.some((lift) => hasFlag(lift, (id) => facingFaults.has(id) || /round/i.test(id)));
  const advice: ProgrammeFinding['advice'] =
    backward.length > 0 && forward !== undefined
      ? { kind: 'exercise', entryId: first.entry.id, to: [forward.id] }
      : { kind: 'setUp' };
  return [
    {
      id: `rail-${first.entry.id}`,
      kind: 'rail',
      severity: 'prefer',
      restsOn: backward.length > 0 ? 'plan' : 'film',
      entryIds: idsOf(own),
      message: {
        id: onFilm ? 'railFacing' : 'railBackward',
        values: { exercise: first.exercise.name },
      },
      advice,
    },
  ];
}
