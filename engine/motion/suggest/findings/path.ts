import type { RepMeasurement } from '../../measurement.ts';
import { certain, type Finding, longEndAtS, type Miss, named, type SetToJudge } from '../finding.ts';
import { centimetres, centimetresOf } from '../wording.ts';

/** Downward movement on the way up that is not worth a word, in metres (chosen here, no source). */
const freeDownM = 0.01;

/** The moment of the largest deviation, where it lies on this side; else the long end. */
function atOf(rep: RepMeasurement, side: 'forward' | 'back'): number {
  const largest = rep.largestDeviation;
  return largest !== null && largest.m.value > 0 === (side === 'forward') ? largest.atS : longEndAtS(rep);
}

/** Reps that leave the expected line on one side by more than its tolerance; up to 1 cm over it is a small miss. */
function leaving({ reps, exercise }: SetToJudge, side: 'forward' | 'back'): Miss[] {
  const { toleranceM } = exercise.targets.path;
  return reps.flatMap((rep) => {
    const drift = side === 'forward' ? rep.driftForwardM : rep.driftBackM;
    if (drift === null) return [];
    const beyond = Math.abs(drift.value) - toleranceM;
    const length = centimetresOf({ value: Math.abs(drift.value), plusMinus: drift.plusMinus });
    const where = side === 'forward' ? 'in front of' : 'behind';
    return certain({
      rep: rep.index,
      atS: atOf(rep, side),
      measure: named(side === 'forward' ? 'driftForwardM' : 'driftBackM', drift, 'm'),
      beyond,
      small: beyond <= 0.01,
      sentence: `On rep ${rep.index} the load gets ${length} ${where} its expected line; up to ${centimetres(toleranceM)} is fine.`,
    });
  });
}

function sinking({ reps }: SetToJudge): Miss[] {
  return reps.flatMap((rep) => {
    const down = rep.downOnWayUpM;
    if (down === null) return [];
    const beyond = down.value - freeDownM;
    return certain({
      rep: rep.index,
      atS: rep.phases.concentric?.startS ?? longEndAtS(rep),
      measure: named('downOnWayUpM', down, 'm'),
      beyond,
      small: beyond <= 0.01,
      sentence: `On rep ${rep.index} the load sinks by ${centimetresOf(down)} on its way up.`,
    });
  });
}

/** Reps whose load turns round more than once at the low end. */
function bouncing({ reps }: SetToJudge): Miss[] {
  return reps.flatMap((rep) =>
    rep.bounces === null
      ? []
      : certain({
          rep: rep.index,
          atS: longEndAtS(rep),
          measure: named('bounces', { value: rep.bounces, plusMinus: 0 }, 'times'),
          beyond: rep.bounces - 1,
          small: false,
          sentence: `On rep ${rep.index} the load turns round ${rep.bounces === 2 ? 'twice' : `${rep.bounces} times`} at the low end.`,
        }),
  );
}

/**
 * Loads that leave their line (a guided or a free one is not judged: the first can't be left, the second isn't one), sink
 * on the way up, or bounce at the long end, where that is the low one.
 */
export function pathFindings(set: SetToJudge): Finding[] {
  const { lowerEnd, beginsWith, targets } = set.exercise;
  if (beginsWith === 'hold') return [];
  const hasLine = targets.path.shape !== 'free' && targets.path.shape !== 'rail';
  const upIsConcentric = lowerEnd === 'long';
  return [
    {
      name: 'forward',
      criterion: 'barPath',
      faults: ['barDriftsForward', 'surgesForward', 'handsDriftForward', 'pathAway', 'swaysForward', 'offItsLine'],
      misses: hasLine ? leaving(set, 'forward') : [],
    },
    {
      name: 'back',
      criterion: 'barPath',
      faults: ['barDriftsBack', 'offItsLine'],
      misses: hasLine ? leaving(set, 'back') : [],
    },
    { name: 'sinksOnWayUp', criterion: 'barPath', faults: ['wavers'], misses: upIsConcentric ? sinking(set) : [] },
    {
      name: 'bounces',
      criterion: 'pauses',
      faults: ['reboundsAtLongEnd'],
      misses: upIsConcentric ? bouncing(set) : [],
    },
  ];
}
