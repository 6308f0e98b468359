import type { Exercise } from '../../exercises/exercise.ts';
import type { RepMeasurement } from '../measurement.ts';
import type { AskedPhase } from './askedTempo.ts';
import { printedMeasure, printedOther, surelyAbove, surelyBelow } from './certain.ts';
import { duringPhase, eccentricVerb, type Finding, type Shown } from './finding.ts';
import { fading, type Lesser, type RepValue, valuesOf, varying } from './setWide.ts';
import { smallMissS, spreadLimitS } from './slack.ts';

const criterion = 'eccentricTempo';

/**
 * Eccentrics that are too quick, slower than useful or fading over the set; where none of these is found, those that
 * differ from rep to rep.
 */
export function tempoFindings(reps: readonly RepMeasurement[], exercise: Exercise, asked: AskedPhase): Finding[] {
  const values = valuesOf(reps, ({ durationsS }) => durationsS.eccentric);
  const verb = eccentricVerb(exercise);

  const lasting = ({ rep, measured }: RepValue, missedBy: number): Shown => ({
    rep,
    missedBy,
    atS: duringPhase(rep, 'eccentric'),
    measure: { name: 'eccentric', ...measured, unit: 's' },
    says: { verb, ...printedMeasure(measured, 's') },
  });
  const quicker = ({ rep, measured, missedBy, than, gap }: Lesser): Shown => ({
    ...lasting({ rep, measured }, missedBy),
    measure: { name: 'eccentric quicker by', ...gap, unit: 's' },
    says: { verb, ...printedMeasure(measured, 's'), otherRep: than.rep.index, ...printedOther(than.measured, 's') },
  });

  const tooQuick: Finding = {
    name: 'tooQuick',
    criterion,
    faults: ['quickLowering', 'quickReturn'],
    severity: 'adjust',
    smallMiss: smallMissS(asked.fromS),
    shown: values.map((one) => lasting(one, surelyBelow(one.measured, asked.fromS, 's'))),
    message: 'eccentricTime',
    asks: asked.says,
  };
  const tooSlow: Finding = {
    name: 'tooSlow',
    criterion,
    faults: ['slowerThanUseful'],
    severity: 'prefer',
    smallMiss: smallMissS(asked.tooLongFromS),
    shown: values.map((one) => lasting(one, surelyAbove(one.measured, asked.tooLongFromS, 's'))),
    message: 'eccentricTime',
    asks: asked.says,
  };
  const fades: Finding = {
    name: 'fades',
    criterion,
    faults: ['tempoFades'],
    severity: 'adjust',
    smallMiss: smallMissS(0),
    shown: fading(values, { limitOf: spreadLimitS, unit: 's', cap: asked.toS }).map(quicker),
    message: 'eccentricQuicker',
    asks: { asked: 'asTheFirst' },
  };
  // No fault of the library says this: those called uneven are so within a rep.
  const varies: Finding = {
    name: 'varies',
    criterion,
    faults: [],
    severity: 'prefer',
    smallMiss: smallMissS(0),
    shown: varying(values, { limitOf: spreadLimitS, unit: 's' }).map(quicker),
    message: 'eccentricQuicker',
    asks: { asked: 'asEachOther' },
  };
  const found = [tooQuick, tooSlow, fades].filter(({ shown }) => shown.some(({ missedBy }) => missedBy > 0));
  return found.length > 0 ? found : [varies];
}
