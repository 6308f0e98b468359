import type { Exercise } from '../../exercises/exercise.ts';
import type { RepMeasurement } from '../measurement.ts';
import { printed, printedMeasure, surelyAbove } from './certain.ts';
import type { Finding, Shown } from './finding.ts';
import { atLongEnd } from './moments.ts';
import { smallHeadMissDeg } from './slack.ts';

const criterion = 'headPosition';

function tips(reps: readonly RepMeasurement[], limitDeg: number, way: 'down' | 'up'): Finding {
  const shownBy = (rep: RepMeasurement): Shown[] => {
    const change = rep.joints?.headTrunkDeg;
    if (!change) return [];
    const size = { value: way === 'down' ? change.value : -change.value, plusMinus: change.plusMinus };
    return [
      {
        rep,
        missedBy: surelyAbove(size, limitDeg, 'deg'),
        atS: atLongEnd(rep),
        measure: { name: 'head against the trunk', ...change, unit: 'deg' },
        does: `changes the head against the trunk by ${printedMeasure(size, 'deg')}, chin ${way}`,
      },
    ];
  };
  return {
    name: way === 'down' ? 'chinDrops' : 'tiltsBack',
    criterion,
    faults: way === 'down' ? ['chinDrops', 'headDrops', 'headMovesInRep'] : ['headTiltsBack', 'headMovesInRep'],
    weight: 'prefer',
    smallMiss: smallHeadMissDeg,
    shown: reps.flatMap(shownBy),
    asked: `up to ${printed(limitDeg, 'deg')} is fine`,
  };
}

/** Heads that leave their place against the trunk by more than the exercise allows, either way. */
export function headFindings(reps: readonly RepMeasurement[], exercise: Exercise): Finding[] {
  return [tips(reps, exercise.targets.headDeg, 'down'), tips(reps, exercise.targets.headDeg, 'up')];
}
