import type { Exercise } from '../../exercises/exercise.ts';
import type { RepMeasurement } from '../measurement.ts';
import { printedMeasure, printedOther, surelyAbove } from './certain.ts';
import { atLongEnd, type Finding, type Shown } from './finding.ts';
import { fading, type Lesser, valuesOf, varying } from './setWide.ts';
import { rangeLimitM, smallDepthMissM, smallRangeMissM } from './slack.ts';

const criterion = 'depth';

/** Only a rule that speaks of the hip crease is judged by it: in other exercises it never comes down to the knee. */
export const hasCreaseRule = ({ targets }: Exercise): boolean => /crease/i.test(targets.depth);

function shortOfDepth(rep: RepMeasurement): Shown[] {
  const depth = rep.joints?.depthM;
  if (!depth || rep.joints?.depthOutcome !== 'short') return [];
  return [
    {
      rep,
      missedBy: surelyAbove(depth, 0, 'm'),
      atS: atLongEnd(rep),
      measure: { name: 'hip crease above the top of the knee', ...depth, unit: 'm' },
      says: printedMeasure(depth, 'm'),
    },
  ];
}

const lessFar = ({ rep, measured, missedBy, than, gap }: Lesser): Shown => ({
  rep,
  missedBy,
  atS: atLongEnd(rep),
  measure: { name: 'range shorter by', ...gap, unit: 'm' },
  says: { ...printedMeasure(measured, 'm'), otherRep: than.rep.index, ...printedOther(than.measured, 'm') },
});

/** Depth that is short; range that fades over the set, or else varies from rep to rep. */
export function rangeFindings(reps: readonly RepMeasurement[], exercise: Exercise): Finding[] {
  const ranges = valuesOf(reps, ({ romM }) => romM);
  const bounds = { limitOf: rangeLimitM, unit: 'm' } as const;
  const short: Finding = {
    name: 'short',
    criterion,
    faults: ['shortOfDepth', 'shortAtLongEnd', 'shortAtBottom', 'noReach', 'noFullReach'],
    weight: 'adjust',
    smallMiss: smallDepthMissM,
    shown: hasCreaseRule(exercise) ? reps.flatMap(shortOfDepth) : [],
    message: 'creaseAboveKnee',
  };
  const fades: Finding = {
    name: 'fades',
    criterion,
    faults: ['rangeFades', 'depthFades'],
    weight: 'adjust',
    smallMiss: smallRangeMissM,
    shown: fading(ranges, bounds).map(lessFar),
    message: 'rangeShorter',
    asks: { asked: 'asTheFirst' },
  };
  const varies: Finding = {
    name: 'varies',
    criterion,
    faults: ['depthVaries'],
    weight: 'adjust',
    smallMiss: smallRangeMissM,
    shown: varying(ranges, bounds).map(lessFar),
    message: 'rangeShorter',
    asks: { asked: 'asEachOther' },
  };
  return [short, fades.shown.length > 0 ? fades : varies];
}
