import { certain, type Finding, longEndAtS, type Miss, named, type SetToJudge } from '../finding.ts';
import { degreesOf } from '../wording.ts';

/** Reps whose head leaves its set-up angle against the trunk, one way, by more than is fine; up to 10° over it is a small miss. */
function turning({ reps, exercise }: SetToJudge, way: 'down' | 'back'): Miss[] {
  const { headDeg } = exercise.targets;
  return reps.flatMap((rep) => {
    const change = rep.joints?.headTrunkDeg ?? null;
    if (change === null || change.value >= 0 !== (way === 'down')) return [];
    const beyond = Math.abs(change.value) - headDeg;
    const angle = degreesOf({ value: Math.abs(change.value), plusMinus: change.plusMinus });
    const does = way === 'down' ? 'the chin drops' : 'the head tilts back';
    return certain({
      rep: rep.index,
      atS: longEndAtS(rep),
      measure: named('headTrunkDeg', change, 'deg'),
      beyond,
      small: beyond <= 10,
      sentence: `On rep ${rep.index} ${does} by ${angle} from the set-up, against the trunk; up to ${headDeg}° is fine.`,
    });
  });
}

/** Heads that drop or tilt back against the trunk. */
export const headFindings = (set: SetToJudge): Finding[] => [
  {
    name: 'down',
    criterion: 'headPosition',
    faults: ['chinDrops', 'headDrops', 'headMovesInRep'],
    misses: turning(set, 'down'),
  },
  {
    name: 'back',
    criterion: 'headPosition',
    faults: ['headTiltsBack', 'headMovesInRep', 'chinReaches'],
    misses: turning(set, 'back'),
  },
];
