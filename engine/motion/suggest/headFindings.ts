import type { Exercise } from '../../exercises/exercise.ts';
import type { RepMeasurement } from '../measurement.ts';
import { printed, printedMeasure, surelyAbove } from './certain.ts';
import { atStretchedEnd, type Finding, type Shown } from './finding.ts';
import { smallHeadMissDeg } from './slack.ts';

const criterion = 'headPosition';

function tips(reps: readonly RepMeasurement[], limitDeg: number, chin: 'down' | 'up'): Finding {
  const shownBy = (rep: RepMeasurement): Shown[] => {
    const change = rep.joints?.headTrunkDeg;
    if (!change) return [];
    const size = { value: chin === 'down' ? change.value : -change.value, plusMinus: change.plusMinus };
    return [
      {
        rep,
        missedBy: surelyAbove(size, limitDeg, 'deg'),
        atS: atStretchedEnd(rep),
        measure: { name: 'head against the trunk', ...change, unit: 'deg' },
        says: { ...printedMeasure(size, 'deg'), direction: chin },
      },
    ];
  };
  return {
    name: chin === 'down' ? 'chinDrops' : 'tiltsBack',
    criterion,
    faults: chin === 'down' ? ['chinDrops', 'headDrops', 'headMovesInRep'] : ['headTiltsBack', 'headMovesInRep'],
    severity: 'prefer',
    smallMiss: smallHeadMissDeg,
    shown: reps.flatMap(shownBy),
    message: 'headMoves',
    asks: { limit: printed(limitDeg, 'deg') },
  };
}

/** Heads that tip against the trunk by more than the exercise allows, down or up. */
export function headFindings(reps: readonly RepMeasurement[], exercise: Exercise): Finding[] {
  return [tips(reps, exercise.targets.headDeg, 'down'), tips(reps, exercise.targets.headDeg, 'up')];
}
