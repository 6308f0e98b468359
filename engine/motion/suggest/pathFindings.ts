import type { Exercise } from '../../exercises/exercise.ts';
import type { Measured, RepMeasurement } from '../measurement.ts';
import { printed, printedMeasure, surelyAbove } from './certain.ts';
import { duringPhase, type Finding, type Shown } from './finding.ts';
import { dipLimitM, smallDipMissM, smallPathMissM } from './slack.ts';

const criterion = 'barPath';

type Side = 'forward' | 'back';

const driftOf = (rep: RepMeasurement, side: Side): Measured | null =>
  side === 'forward' ? rep.driftForwardM : rep.driftBackM;

/** When the load is furthest from its path, if that is on this side; else during the concentric. */
function furthestAtS(rep: RepMeasurement, side: Side): number {
  const furthest = rep.largestDeviation;
  if (furthest && (side === 'forward' ? furthest.m.value > 0 : furthest.m.value < 0)) return furthest.atS;
  return duringPhase(rep, 'concentric');
}

function drifts(reps: readonly RepMeasurement[], side: Side, toleranceM: number): Finding {
  const shownBy = (rep: RepMeasurement): Shown[] => {
    const drift = driftOf(rep, side);
    if (drift === null) return [];
    return [
      {
        rep,
        missedBy: surelyAbove(drift, toleranceM, 'm'),
        atS: furthestAtS(rep, side),
        measure: { name: `${side} drift`, ...drift, unit: 'm' },
        says: { ...printedMeasure(drift, 'm'), direction: side },
      },
    ];
  };
  return {
    name: side === 'forward' ? 'driftsForward' : 'driftsBack',
    criterion,
    faults:
      side === 'forward'
        ? ['barDriftsForward', 'handsDriftForward', 'pathAway', 'offItsLine']
        : ['barDriftsBack', 'offItsLine'],
    severity: 'adjust',
    smallMiss: smallPathMissM(toleranceM),
    shown: reps.flatMap(shownBy),
    message: 'leavesPath',
    asks: { limit: printed(toleranceM, 'm') },
  };
}

/** A load that reverses during the concentric: sinks on its way up, where up is its direction. */
function goesBack(reps: readonly RepMeasurement[], { lowerEnd }: Exercise): Finding {
  const shownBy = (rep: RepMeasurement): Shown[] => {
    const { downOnWayUpM: dip } = rep;
    if (dip === null) return [];
    return [
      {
        rep,
        missedBy: surelyAbove(dip, dipLimitM, 'm'),
        atS: duringPhase(rep, 'concentric'),
        measure: { name: 'back on the way', ...dip, unit: 'm' },
        says: printedMeasure(dip, 'm'),
      },
    ];
  };
  return {
    name: 'goesBack',
    criterion,
    faults: ['wavers'],
    severity: 'adjust',
    smallMiss: smallDipMissM,
    shown: reps.flatMap(shownBy),
    message: 'goesBack',
    asks: { path: lowerEnd === 'stretched' ? 'up' : 'other' },
  };
}

/**
 * Loads that leave their expected path, and loads that reverse on the way. A free path has no line to leave, and a load on a
 * rail can't leave it: what looks like drift there is the rail's own lean.
 */
export function pathFindings(reps: readonly RepMeasurement[], exercise: Exercise): Finding[] {
  const { shape, toleranceM } = exercise.targets.path;
  const expected = shape === 'free' || shape === 'rail' ? [] : (['forward', 'back'] as const);
  return [...expected.map((side) => drifts(reps, side, toleranceM)), goesBack(reps, exercise)];
}
