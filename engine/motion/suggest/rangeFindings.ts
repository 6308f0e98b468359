import { type Exercise, narrowerOf } from '../../exercises/exercise.ts';
import type { Measured, RepMeasurement } from '../measurement.ts';
import { printedMeasure, printedOther, surelyAbove } from './certain.ts';
import { atShortenedEnd, atStretchedEnd, type Finding, type Shown, whereEndIs } from './finding.ts';
import { behindTwo, fading, type Lesser, valuesOf, varying } from './setWide.ts';
import { rangeLimitM, reachLimitPct, smallDepthMissM, smallRangeMissM, smallReachMissPct } from './slack.ts';

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
      atS: atStretchedEnd(rep),
      measure: { name: 'hip crease above the top of the knee', ...depth, unit: 'm' },
      says: printedMeasure(depth, 'm'),
    },
  ];
}

type End = 'stretched' | 'shortened';

/** Faults by which a single rep misses an end, the best first; those of the shortened end name it as their narrower criterion. */
const missedAt = {
  stretched: ['shortOfDepth', 'shortAtLongEnd', 'shortAtBottom', 'noReach', 'noFullReach'],
  shortened: [
    ...['softLockout', 'shortOfLockout', 'notLockedOut', 'notStoodUp', 'shortOfTop', 'shortAtShortEnd', 'shortAtTop'],
    ...['armsNotLong', 'finishVaries', 'stopsBeforeEnd'],
  ],
} as const;
const fadesAt = { stretched: ['depthFades', 'rangeFades'], shortened: ['finishFades', ...missedAt.shortened] } as const;
const variesAt = { stretched: ['depthVaries'], shortened: missedAt.shortened } as const;

/** Of some faults, those of the exercise that speak of an end; one that belongs to the set-up speaks of neither. */
const speaksOf = ({ faults }: Exercise, end: End, ids: readonly string[]): readonly string[] =>
  ids.filter((id) => {
    const fault = faults.find((one) => one.id === id);
    if (fault === undefined || fault.past) return false;
    return end === 'shortened' ? narrowerOf(fault).includes('shortRange') : narrowerOf(fault).length === 0;
  });

const percentOf = ({ value, plusMinus }: Measured): Measured => ({ value: 100 * value, plusMinus: 100 * plusMinus });

/** Reps that turn before others do at one end; told of that end alone. */
function endFinding(reps: readonly RepMeasurement[], exercise: Exercise, end: End): Finding {
  const reaches = valuesOf(reps, ({ reach }) => reach && percentOf(reach[end]));
  const bounds = { limitOf: () => reachLimitPct, unit: '%' } as const;
  const where = whereEndIs(exercise, end);
  const turnsEarly = ({ rep, missedBy, than, gap }: Lesser): Shown => ({
    rep,
    missedBy,
    atS: end === 'stretched' ? atStretchedEnd(rep) : atShortenedEnd(rep),
    measure: { name: `${end} end missed by`, ...gap, unit: '%' },
    says: { ...printedMeasure(gap, '%'), where, otherRep: than.rep.index },
  });
  const faded = fading(reaches, bounds);
  const kind = faded.length > 0 ? 'fades' : 'varies';
  return {
    name: end === 'stretched' ? kind : kind === 'fades' ? 'finishFades' : 'finishVaries',
    criterion,
    faults: speaksOf(exercise, end, (kind === 'fades' ? fadesAt : variesAt)[end]),
    severity: 'adjust',
    smallMiss: smallReachMissPct,
    shown: (kind === 'fades' ? faded : behindTwo(reaches, bounds)).map(turnsEarly),
    message: 'turnsEarly',
    asks: { asked: kind === 'fades' ? 'asTheFirst' : 'asEachOther' },
  };
}

const lessFar = ({ rep, measured, missedBy, than, gap }: Lesser): Shown => ({
  rep,
  missedBy,
  atS: atStretchedEnd(rep),
  measure: { name: 'range shorter by', ...gap, unit: 'm' },
  says: { ...printedMeasure(measured, 'm'), otherRep: than.rep.index, ...printedOther(than.measured, 'm') },
});

/** Range that fades over the set, or else varies from rep to rep, at an end that can't be told. */
function wholeRange(reps: readonly RepMeasurement[]): Finding {
  const ranges = valuesOf(reps, ({ romM }) => romM);
  const bounds = { limitOf: rangeLimitM, unit: 'm' } as const;
  const faded = fading(ranges, bounds);
  const kind = faded.length > 0 ? 'fades' : 'varies';
  return {
    name: kind,
    criterion,
    faults: kind === 'fades' ? ['rangeFades', 'depthFades'] : ['depthVaries'],
    severity: 'adjust',
    smallMiss: smallRangeMissM,
    shown: (kind === 'fades' ? faded : varying(ranges, bounds)).map(lessFar),
    message: 'rangeShorter',
    asks: { asked: kind === 'fades' ? 'asTheFirst' : 'asEachOther' },
  };
}

/**
 * Depth that is short; reps that go less far than others of the set, at the end at which they do. The ends are compared within
 * the set, which needs no scale. A load without an upper and a lower end is judged by its whole range.
 */
export function rangeFindings(reps: readonly RepMeasurement[], exercise: Exercise): Finding[] {
  const short: Finding = {
    name: 'short',
    criterion,
    faults: missedAt.stretched,
    severity: 'adjust',
    smallMiss: smallDepthMissM,
    shown: hasCreaseRule(exercise) ? reps.flatMap(shortOfDepth) : [],
    message: 'creaseAboveKnee',
  };
  const ends = reps.some(({ reach }) => reach !== null)
    ? [endFinding(reps, exercise, 'stretched'), endFinding(reps, exercise, 'shortened')]
    : [wholeRange(reps)];
  return [short, ...ends];
}
